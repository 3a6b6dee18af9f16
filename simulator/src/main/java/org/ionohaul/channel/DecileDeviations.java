package org.ionohaul.channel;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.ionohaul.limits.OutOfRange;

/**
 * How a level scatters about its median, as planning Recommendations tell it: by how much the upper decile lies above the
 * median and the lower one below. Half a normal distribution on each side, matched to them.
 *
 * @param upperDb upper decile over the median, in dB, zero or more
 * @param lowerDb median over the lower decile, in dB, zero or more
 */
public record DecileDeviations(double upperDb, double lowerDb) {
    /** How many standard deviations lie between median and decile of a normal distribution. */
    private static final double DEVIATIONS_TO_DECILE =
            NormalDistribution.of(0, 1).inverseCumulativeProbability(0.9);

    /** Checks both values. */
    public DecileDeviations {
        OutOfRange.unless(upperDb >= 0 && upperDb < 100, "upperDb", "must be from 0 to 100", upperDb);
        OutOfRange.unless(lowerDb >= 0 && lowerDb < 100, "lowerDb", "must be from 0 to 100", lowerDb);
    }

    /**
     * Returns by how much the level lies over its median, in dB.
     *
     * @param probability chance that it is below the result, above 0 and below 1
     */
    public double overMedianDb(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("probability must be above 0 and below 1: " + probability);
        }
        double deviations = NormalDistribution.of(0, 1).inverseCumulativeProbability(probability);
        return deviations / DEVIATIONS_TO_DECILE * (deviations > 0 ? upperDb : lowerDb);
    }
}
