package org.ionohaul.channel;

import org.apache.commons.rng.sampling.distribution.ContinuousUniformSampler;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;

/** Gain of a path that does not fade: power 1, and a phase that is drawn once a trial. */
final class SteadyGain implements PathGain {
    private final double cosine;
    private final double sine;

    SteadyGain(TrialStreams streams, int path) {
        double phase = ContinuousUniformSampler.of(streams.open(Purpose.FADING, path), -Math.PI, Math.PI)
                .sample();
        cosine = Math.cos(phase);
        sine = Math.sin(phase);
    }

    @Override
    public void at(long atNanos, double[] gains, int path) {
        gains[2 * path] = cosine;
        gains[2 * path + 1] = sine;
    }
}
