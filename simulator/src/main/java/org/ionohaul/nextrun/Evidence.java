package org.ionohaul.nextrun;

import org.apache.commons.rng.UniformRandomProvider;

/** Something that may be observed, as far as draws of what is believed are concerned. */
interface Evidence {
    /**
     * Makes an observation under one draw, and adds to each draw the logarithm of how likely it is there, up to a constant.
     *
     * @param truth the draw that counts as the truth
     * @param time which observation under it, from 0
     * @param logs one a draw
     */
    void observe(int truth, int time, UniformRandomProvider random, double[] logs);
}
