package org.ionohaul.statistics;

import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * Between which two order statistics of a sample a quantile of the population lies, whatever the distribution.
 *
 * <p>The number of observations at or below the quantile is binomial, so that the interval from the {@code lower}-th to
 * the {@code upper}-th smallest covers it with the chance that the number lies from {@code lower} to {@code upper - 1}
 * (H. A. David and H. N. Nagaraja, "Order Statistics", 3rd ed. 2003, section 7.1). Ties and values at infinity only
 * raise the coverage.
 *
 * @param lower rank of the lower end, 1 for the smallest; 0 if no observation is low enough
 * @param upper rank of the upper end; the sample's size plus 1 if no observation is high enough
 * @param coverage chance that the interval covers the quantile, from 0 to 1
 */
public record RankInterval(int lower, int upper, double coverage) {
    /**
     * Returns the shortest interval that misses on either side with at most half of the error allowed.
     *
     * @param size size of the sample, 1 or more
     * @param probability which quantile, above 0, below 1
     * @param confidence chance of covering it at least, above 0, below 1
     */
    public static RankInterval of(int size, double probability, double confidence) {
        if (!(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("confidence must lie above 0 and below 1: " + confidence);
        }
        BinomialDistribution below = below(size, probability);
        double tail = (1 - confidence) / 2;
        int firstAboveTail = below.inverseCumulativeProbability(tail);
        int lower = below.cumulativeProbability(firstAboveTail) <= tail ? firstAboveTail + 1 : firstAboveTail;
        int upper = below.inverseSurvivalProbability(tail) + 1;
        return between(lower, upper, size, probability);
    }

    /**
     * Returns the interval between two ranks.
     *
     * @param lower rank of the lower end, from 0
     * @param upper rank of the upper end, above {@code lower}, at most {@code size + 1}
     * @param size size of the sample, 1 or more
     * @param probability which quantile, above 0, below 1
     */
    public static RankInterval between(int lower, int upper, int size, double probability) {
        if (lower < 0 || upper <= lower || upper > size + 1) {
            throw new IllegalArgumentException("ranks not in order: " + lower + ", " + upper + " of " + size);
        }
        return new RankInterval(lower, upper, below(size, probability).probability(lower - 1, upper - 1));
    }

    private static BinomialDistribution below(int size, double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("probability must lie above 0 and below 1: " + probability);
        }
        return BinomialDistribution.of(size, probability);
    }
}
