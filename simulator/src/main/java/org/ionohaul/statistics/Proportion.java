package org.ionohaul.statistics;

import org.apache.commons.statistics.interval.BinomialConfidenceInterval;
import org.apache.commons.statistics.interval.Interval;

/**
 * A count of hits among independent trials.
 *
 * @param hits how many trials hit, from zero to {@code total}
 * @param total how many trials there were, 1 or more
 */
public record Proportion(int hits, int total) {
    /** Checks the counts. */
    public Proportion {
        if (hits < 0 || hits > total || total < 1) {
            throw new IllegalArgumentException("not a count of hits among trials: " + hits + " of " + total);
        }
    }

    /** Returns the share of hits, from 0 to 1. */
    public double share() {
        return (double) hits / total;
    }

    /**
     * Returns the share with Wilson's score interval (E. B. Wilson, "Probable inference, the law of succession, and
     * statistical inference", J. Am. Stat. Assoc. 22, 1927), which stays inside 0 to 1 and holds its confidence on
     * average over shares, also near 0 and 1.
     *
     * @param confidence chance that the interval covers the true share, above 0, below 1
     */
    public Estimate wilson(double confidence) {
        return within(BinomialConfidenceInterval.WILSON_SCORE, confidence);
    }

    /**
     * Returns the share with the exact interval (C. J. Clopper and E. S. Pearson, Biometrika 26, 1934), which covers
     * the true share with at least the confidence whatever that share is.
     *
     * @param confidence chance that the interval covers the true share, above 0, below 1
     */
    public Estimate exact(double confidence) {
        return within(BinomialConfidenceInterval.CLOPPER_PEARSON, confidence);
    }

    private Estimate within(BinomialConfidenceInterval method, double confidence) {
        Interval interval = method.fromErrorRate(total, hits, 1 - confidence);
        // Rounding can leave an end a few ulp beyond the share that it should touch, or beyond 0 or 1.
        return new Estimate(
                share(),
                Math.max(0, Math.min(share(), interval.getLowerBound())),
                Math.min(1, Math.max(share(), interval.getUpperBound())));
    }
}
