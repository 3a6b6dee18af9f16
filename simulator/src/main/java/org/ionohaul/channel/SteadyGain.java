package org.ionohaul.channel;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ContinuousUniformSampler;

/** Gain of a path that does not fade: power 1, and a phase that is drawn once a trial. */
final class SteadyGain implements PathGain {
    private final double cosine;
    private final double sine;

    SteadyGain(UniformRandomProvider chance) {
        double phase = ContinuousUniformSampler.of(chance, -Math.PI, Math.PI).sample();
        cosine = Math.cos(phase);
        sine = Math.sin(phase);
    }

    @Override
    public void at(long atNanos, double[] gains, int path) {
        gains[2 * path] = cosine;
        gains[2 * path + 1] = sine;
    }
}
