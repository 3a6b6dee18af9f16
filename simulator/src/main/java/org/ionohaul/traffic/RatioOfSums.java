package org.ionohaul.traffic;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.Jackknifed;

/**
 * A ratio of two sums over independent trials, such as messages in time to messages written. Messages of one trial share its
 * luck, so that trials, and not messages, are what the interval counts (grouped jackknife).
 */
final class RatioOfSums {
    private final double[] numerators;
    private final double[] denominators;

    /**
     * Makes a ratio.
     *
     * @param numerators what each trial adds to the numerator
     * @param denominators what it adds to the denominator
     */
    RatioOfSums(double[] numerators, double[] denominators) {
        this.numerators = numerators;
        this.denominators = denominators;
    }

    /** Returns whether there is anything to divide by. */
    boolean exists() {
        return Arrays.stream(denominators).sum() > 0;
    }

    /**
     * Returns the ratio with its interval; of fewer trials than the jackknife has blocks nothing is known but its range.
     *
     * @param least it can't be below
     * @param most it can't be above
     */
    Estimate within(double least, double most) {
        double value = without(-1);
        if (numerators.length < Jackknifed.BLOCKS) {
            return new Estimate(value, Math.min(least, value), Math.max(most, value));
        }
        return Jackknifed.of(value, this::without).within(least, most, Estimate.CONFIDENCE);
    }

    private double without(int block) {
        double above = 0;
        double below = 0;
        for (int trial = 0; trial < numerators.length; trial++) {
            if (trial % Jackknifed.BLOCKS != block) {
                above += numerators[trial];
                below += denominators[trial];
            }
        }
        return below > 0 ? above / below : 0;
    }

    /** Returns the mean a trial of a number. */
    static RatioOfSums mean(double[] values) {
        return new RatioOfSums(
                values, IntStream.range(0, values.length).mapToDouble(it -> 1).toArray());
    }
}
