package org.ionohaul.nextrun;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** A number read off a meter whose error is normal. */
final class ReadingEvidence implements Evidence {
    private final double[] expected;
    private final double deviation;

    /**
     * Prepares a reading.
     *
     * @param expected what a meter without an error would show under each draw
     * @param deviation standard deviation of the error, positive
     */
    ReadingEvidence(double[] expected, double deviation) {
        this.expected = expected.clone();
        this.deviation = deviation;
    }

    @Override
    public void observe(int truth, int time, UniformRandomProvider random, double[] logs) {
        double read = expected[truth]
                + deviation * ZigguratSampler.NormalizedGaussian.of(random).sample();
        for (int draw = 0; draw < logs.length; draw++) {
            double off = (read - expected[draw]) / deviation;
            logs[draw] -= off * off / 2;
        }
    }
}
