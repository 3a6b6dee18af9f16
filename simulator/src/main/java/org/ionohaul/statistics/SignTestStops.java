package org.ionohaul.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * When to stop comparing two sides pair by pair, and to name the one that won more pairs: after each number of pairs the
 * lead (pairs won less pairs lost) that is enough. Pairs without a winner are not counted.
 *
 * <p>How often such a rule names which side is worked out exactly, by dynamic programming over the lead: no approximation,
 * but for pairs that are independent and alike. Runs of one evening need not be.
 */
public final class SignTestStops {
    static final int NEVER = Integer.MAX_VALUE;
    private static final int MOST_PAIRS = 10_000;

    private final int[] leadNeeded;

    private SignTestStops(int[] leadNeeded) {
        if (leadNeeded.length < 1 || leadNeeded.length > MOST_PAIRS) {
            throw new IllegalArgumentException("pairs must be from 1 to " + MOST_PAIRS + ": " + leadNeeded.length);
        }
        this.leadNeeded = leadNeeded;
    }

    /**
     * What a rule comes to.
     *
     * @param first chance that the first side is named
     * @param second chance that the second side is named
     * @param meanPairs how many pairs it takes in the mean
     */
    public record Chances(double first, double second, double meanPairs) {
        /** Returns the chance that a side is named. */
        public double named() {
            return first + second;
        }
    }

    /**
     * Returns the rule that looks once, after all pairs, by the exact two-sided sign test.
     *
     * @param pairs how many pairs there are, from 1 to 10,000
     * @param errorRate accepted chance that either of two like sides is named, above 0, below 1
     */
    public static SignTestStops atEnd(int pairs, double errorRate) {
        int[] leads = never(pairs);
        leads[pairs - 1] = significantLead(pairs, errorRate);
        return new SignTestStops(leads);
    }

    /**
     * Returns the rule that looks after every pair as if it were the only look: what many do, and more often wrong than the
     * error rate says.
     *
     * @param mostPairs where it ends in any case, from 1 to 10,000
     * @param errorRate of each look, above 0, below 1
     */
    public static SignTestStops atEveryPair(int mostPairs, double errorRate) {
        return new SignTestStops(IntStream.rangeClosed(1, mostPairs)
                .map(pairs -> significantLead(pairs, errorRate))
                .toArray());
    }

    /**
     * Returns the rule that stops as soon as one side leads by so many pairs (a truncated sequential test of A. Wald, Ann.
     * Math. Stat. 16, 1945). With {@code lead} equal to {@code mostPairs} it asks that one side wins all of them.
     *
     * @param lead 1 or more
     * @param mostPairs where it ends in any case, from 1 to 10,000
     */
    public static SignTestStops atLead(int lead, int mostPairs) {
        if (lead < 1) {
            throw new IllegalArgumentException("lead must be at least 1: " + lead);
        }
        int[] leads = never(mostPairs);
        Arrays.fill(leads, lead);
        return new SignTestStops(leads);
    }

    /**
     * Returns the rule of the smallest lead that names either of two like sides with at most the accepted chance.
     *
     * @param mostPairs where it ends in any case, from 1 to 10,000
     * @param errorRate above 0, below 1
     */
    public static SignTestStops atSafeLead(int mostPairs, double errorRate) {
        requireRate(errorRate);
        // By halving: the larger the lead, the seldomer it is reached. One more than all pairs is never reached.
        int tooSmall = 0;
        int safe = mostPairs + 1;
        while (safe - tooSmall > 1) {
            int middle = (tooSmall + safe) >>> 1;
            if (atLead(middle, mostPairs).chances(0.5).named() <= errorRate) {
                safe = middle;
            } else {
                tooSmall = middle;
            }
        }
        return atLead(safe, mostPairs);
    }

    /** Returns how many pairs it takes at most. */
    public int mostPairs() {
        return leadNeeded.length;
    }

    /**
     * Returns whether it stops and names the leader after so many pairs.
     *
     * @param pairs from 1 to {@link #mostPairs()}
     * @param lead pairs won less pairs lost, of either sign
     */
    public boolean isEnough(int pairs, int lead) {
        return Math.abs(lead) >= leadNeeded[pairs - 1];
    }

    /**
     * Returns what the rule comes to if each pair, independent of the others, is the first side's with a fixed chance.
     *
     * @param firstWins that chance, from 0 to 1
     */
    public Chances chances(double firstWins) {
        if (!(firstWins >= 0 && firstWins <= 1)) {
            throw new IllegalArgumentException("firstWins must be from 0 to 1: " + firstWins);
        }
        int most = mostPairs();
        double[] atLead = new double[2 * most + 1];
        atLead[most] = 1;
        double first = 0;
        double second = 0;
        double meanPairs = 0;
        for (int pairs = 1; pairs <= most; pairs++) {
            double[] next = new double[atLead.length];
            for (int lead = 1 - pairs; lead < pairs; lead++) {
                double chance = atLead[most + lead];
                meanPairs += chance;
                next[most + lead + 1] += chance * firstWins;
                next[most + lead - 1] += chance * (1 - firstWins);
            }
            for (int lead = 1; lead <= pairs; lead++) {
                if (isEnough(pairs, lead)) {
                    first += next[most + lead];
                    second += next[most - lead];
                    next[most + lead] = 0;
                    next[most - lead] = 0;
                }
            }
            atLead = next;
        }
        return new Chances(first, second, meanPairs);
    }

    /**
     * Returns how many pairs the two-sided sign test needs by the normal approximation, (z_a / 2 + z_b sqrt(p q))^2 / (p -
     * 1/2)^2, rounded to the nearest: the number that textbooks print. The exact test needs some pairs more.
     *
     * @param firstWins chance that a pair is the first side's, from above 0 to below 1, not a half
     * @param errorRate accepted chance that either of two like sides is named, above 0, below 1
     * @param power chance asked for that the better side is named, above 0, below 1
     */
    public static long approximatePairs(double firstWins, double errorRate, double power) {
        requireRate(errorRate);
        requireRate(power);
        if (!(firstWins > 0 && firstWins < 1 && firstWins != 0.5)) {
            throw new IllegalArgumentException("firstWins must be above 0, below 1 and not 0.5: " + firstWins);
        }
        double scores =
                normalScore(errorRate / 2) / 2 + normalScore(1 - power) * Math.sqrt(firstWins * (1 - firstWins));
        return Math.round(scores * scores / ((firstWins - 0.5) * (firstWins - 0.5)));
    }

    static double normalScore(double upperTail) {
        return NormalDistribution.of(0, 1).inverseSurvivalProbability(upperTail);
    }

    /** Returns the smallest lead that the exact two-sided test takes for more than chance; never if there is none. */
    static int significantLead(int pairs, double errorRate) {
        requireRate(errorRate);
        BinomialDistribution alike = BinomialDistribution.of(pairs, 0.5);
        for (int wins = pairs / 2 + 1; wins <= pairs; wins++) {
            if (2 * alike.survivalProbability(wins - 1) <= errorRate) {
                return 2 * wins - pairs;
            }
        }
        return NEVER;
    }

    private static int[] never(int pairs) {
        int[] leads = new int[Math.max(0, pairs)];
        Arrays.fill(leads, NEVER);
        return leads;
    }

    static void requireRate(double rate) {
        if (!(rate > 0 && rate < 1)) {
            throw new IllegalArgumentException("must lie above 0 and below 1: " + rate);
        }
    }
}
