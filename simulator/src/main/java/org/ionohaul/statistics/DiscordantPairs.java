package org.ionohaul.statistics;

import org.apache.commons.statistics.distribution.NormalDistribution;
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

    /** Returns the same with the sides changed. */
    public DiscordantPairs swapped() {
        return new DiscordantPairs(second, first);
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
     * Returns how much larger the first side's share of hits is than the second's, with the interval of D. G. Bonett and
     * R. M. Price (Stat. Methods Med. Res. 21:479, 2012): that of Wald with one pair of either kind added.
     *
     * @param pairs how many pairs there were in all, discordant or not, at least {@link #total()} and 1
     * @param confidence chance that the interval covers the true difference, above 0, below 1
     */
    public Estimate shareDifference(int pairs, double confidence) {
        if (pairs < Math.max(1, total())) {
            throw new IllegalArgumentException("pairs must be at least " + Math.max(1, total()) + ": " + pairs);
        }
        double value = (double) (first - second) / pairs;
        double enlarged = pairs + 2.0;
        double middle = (first - second) / enlarged;
        double variance = ((total() + 2) / enlarged - middle * middle) / enlarged;
        double reach =
                Math.sqrt(variance) * NormalDistribution.of(0, 1).inverseSurvivalProbability((1 - confidence) / 2);
        return new Estimate(
                value, Math.max(-1, Math.min(value, middle - reach)), Math.min(1, Math.max(value, middle + reach)));
    }
}
