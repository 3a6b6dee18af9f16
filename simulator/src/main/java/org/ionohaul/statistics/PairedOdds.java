package org.ionohaul.statistics;

import java.util.OptionalInt;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * How often a pair of observations is the one side's or the other's, and how many pairs it takes to tell: McNemar's test in
 * its exact form, the sign test over the pairs that one side won (S. W. Duffy, Biometrics 40, 1984). Pairs must be
 * independent and alike.
 *
 * @param first chance that just the first side hit, or was first, from 0 to 1
 * @param second the same of the second side; both together at most 1
 */
public record PairedOdds(double first, double second) {
    /** Rounding of shares that sum to one. */
    private static final double ROUNDING = 1e-9;

    /** Checks the chances. */
    public PairedOdds {
        if (!(first >= 0 && second >= 0 && first + second <= 1 + ROUNDING)) {
            throw new IllegalArgumentException("not chances of a pair: " + first + ", " + second);
        }
    }

    /** Returns the chance that a pair is won by either side. */
    public double decided() {
        return Math.min(1, first + second);
    }

    /** Returns how often the first side wins a pair that is won at all; a half if none is. */
    public double firstOfDecided() {
        return decided() == 0 ? 0.5 : Math.min(1, first / decided());
    }

    /**
     * Returns the chance that the exact two-sided test names the first side.
     *
     * @param pairs how many pairs there are, won or not, 1 or more
     * @param errorRate accepted chance that either of two like sides is named, above 0, below 1
     */
    public double named(int pairs, double errorRate) {
        return named(pairs, namedByDecided(pairs, errorRate));
    }

    /**
     * Returns after how many pairs the exact test names the first side with the power asked for, and with any larger number up
     * to the most as well (its power does not rise steadily); empty if no number up to the most will do.
     *
     * @param errorRate accepted chance that either of two like sides is named, above 0, below 1
     * @param power chance asked for, above 0, below 1
     * @param mostPairs where to give up, 1 or more
     */
    public OptionalInt pairsNeeded(double errorRate, double power, int mostPairs) {
        SignTestStops.requireRate(power);
        double[] byDecided = namedByDecided(mostPairs, errorRate);
        int pairs = mostPairs;
        while (pairs > 0 && named(pairs, byDecided) >= power) {
            pairs--;
        }
        return pairs == mostPairs ? OptionalInt.empty() : OptionalInt.of(pairs + 1);
    }

    /**
     * Returns how many pairs McNemar's test needs by the normal approximation, (z_a sqrt(s) + z_b sqrt(s - d^2))^2 / d^2 with
     * s the sum and d the difference of both chances (R. J. Connor, Biometrics 43, 1987; J. M. Lachin, Stat. Med. 11, 1992),
     * rounded up: the number that textbooks print. The exact test needs some pairs more.
     *
     * @param errorRate accepted chance that either of two like sides is named, above 0, below 1
     * @param power chance asked for, above 0, below 1
     */
    public long approximatePairs(double errorRate, double power) {
        SignTestStops.requireRate(errorRate);
        SignTestStops.requireRate(power);
        double difference = first - second;
        if (difference == 0) {
            throw new IllegalArgumentException("alike: no number of pairs tells them apart");
        }
        double scores = SignTestStops.normalScore(errorRate / 2) * Math.sqrt(decided())
                + SignTestStops.normalScore(1 - power) * Math.sqrt(decided() - difference * difference);
        return (long) Math.ceil(scores * scores / (difference * difference));
    }

    private double named(int pairs, double[] byDecided) {
        BinomialDistribution decided = BinomialDistribution.of(pairs, decided());
        double named = 0;
        for (int count = 1; count <= pairs; count++) {
            named += decided.probability(count) * byDecided[count];
        }
        return named;
    }

    /** Returns the chance that the first side is named, by the number of pairs that were won. */
    private double[] namedByDecided(int most, double errorRate) {
        double[] named = new double[most + 1];
        for (int count = 1; count <= most; count++) {
            int lead = SignTestStops.significantLead(count, errorRate);
            named[count] = lead == SignTestStops.NEVER
                    ? 0
                    : BinomialDistribution.of(count, firstOfDecided()).survivalProbability((count + lead) / 2 - 1);
        }
        return named;
    }
}
