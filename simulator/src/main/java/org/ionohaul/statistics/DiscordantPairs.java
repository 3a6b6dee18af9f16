package org.ionohaul.statistics;

import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.inference.BinomialTest;

/**
 * Pairs of which just one side hit: all that a paired comparison of two shares rests on (Q. McNemar, Psychometrika 12,
 * 1947). Its exact form is the sign test.
 *
 * @param first pairs of which just the first side hit, zero or more
 * @param second pairs of which just the second side hit, zero or more
 */
public record DiscordantPairs(int first, int second) {
    /** Checks the counts. */
    public DiscordantPairs {
        if (first < 0 || second < 0) {
            throw new IllegalArgumentException("counts must not be negative: " + first + ", " + second);
        }
    }

    /** Returns how many pairs were discordant. */
    public int total() {
        return Math.addExact(first, second);
    }

    /** Returns the chance of a split at least as uneven if both sides were alike (exact, two-sided); 1 without pairs. */
    public double exactPValue() {
        return total() == 0
                ? 1
                : BinomialTest.withDefaults().test(total(), first, 0.5).getPValue();
    }

    /**
     * Returns the two-sided mid-p value, which counts the split seen by half: closer to the nominal rate than the exact
     * one (M. W. Fagerland, S. Lydersen and P. Laake, BMC Med. Res. Methodol. 13:91, 2013); 1 without pairs.
     */
    public double midPValue() {
        return total() == 0
                ? 1
                : exactPValue() - BinomialDistribution.of(total(), 0.5).probability(first);
    }

    /** Returns the chi-squared statistic with Yates's correction, one degree of freedom; needs a pair. */
    public double correctedChiSquared() {
        double excess = Math.max(0, Math.abs(first - second) - 1);
        return excess * excess / total();
    }

    /** Returns the p-value that belongs to {@link #correctedChiSquared()}. */
    public double correctedPValue() {
        return ChiSquaredDistribution.of(1).survivalProbability(correctedChiSquared());
    }

    /**
     * Returns how many times as often the first side alone hit as the second, with the exact interval that follows from
     * Clopper and Pearson's for the first side's share; needs a pair of the second kind.
     *
     * @param confidence chance that the interval covers the true ratio, above 0, below 1
     */
    public Estimate ratio(double confidence) {
        Estimate share = new Proportion(first, total()).exact(confidence);
        return new Estimate((double) first / second, odds(share.low()), odds(share.high()));
    }

    private static double odds(double share) {
        return share / (1 - share);
    }
}
