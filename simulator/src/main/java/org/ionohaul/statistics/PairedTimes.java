package org.ionohaul.statistics;

import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.statistics.descriptive.Variance;

/**
 * Two completion times a trial, taken under the same conditions, and which of them was first.
 *
 * <p>A time that never came is infinite and comes after every other. Two that never came are neither first nor tied.
 */
public final class PairedTimes {
    private final double[] first;
    private final double[] second;

    private PairedTimes(double[] first, double[] second) {
        this.first = first;
        this.second = second;
    }

    /**
     * Returns the pairs of these times.
     *
     * @param first a time a trial, in any unit, infinite if it never came; copied
     * @param second the other time of the same trial; same length, same unit; copied
     */
    public static PairedTimes of(double[] first, double[] second) {
        if (first.length != second.length || first.length == 0) {
            throw new IllegalArgumentException("not pairs: " + first.length + " and " + second.length + " times");
        }
        return new PairedTimes(first.clone(), second.clone());
    }

    /** Returns in how many trials the first time came before the second. */
    public Proportion firstBefore() {
        return count(i -> first[i] < second[i]);
    }

    /** Returns in how many trials the second time came before the first. */
    public Proportion secondBefore() {
        return count(i -> second[i] < first[i]);
    }

    /** Returns in how many trials neither time came. */
    public Proportion neither() {
        return count(this::isNeither);
    }

    /** Returns the trials that one of the two won: the sign test of whether either comes first more often. */
    public DiscordantPairs signs() {
        return new DiscordantPairs(firstBefore().hits(), secondBefore().hits());
    }

    /** Returns the trials in which just one of the two kept a deadline. */
    public DiscordantPairs deadlineKeptByOne(double deadline) {
        return deadlineKeptByOne(deadline, deadline);
    }

    /**
     * Returns the trials in which just one of the two kept its own deadline.
     *
     * @param ofFirst deadline of the first
     * @param ofSecond deadline of the second
     */
    public DiscordantPairs deadlineKeptByOne(double ofFirst, double ofSecond) {
        return new DiscordantPairs(
                count(i -> first[i] <= ofFirst && second[i] > ofSecond).hits(),
                count(i -> second[i] <= ofSecond && first[i] > ofFirst).hits());
    }

    /**
     * Returns a quantile of the first's lead (second less first), over the trials in which at least one came; infinite
     * where only one did.
     *
     * @param probability above 0, below 1
     * @param confidence chance of covering the population's quantile at least, above 0, below 1
     */
    public Estimate lead(double probability, double confidence) {
        double[] leads = IntStream.range(0, first.length)
                .filter(i -> !isNeither(i))
                .mapToDouble(i -> second[i] - first[i])
                .toArray();
        return leads.length == 0
                ? new Estimate(0, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)
                : OrderedSample.of(leads).quantile(probability, confidence);
    }

    /**
     * Returns how much the pairing sharpens a comparison: the variance of the difference over the sum of both variances,
     * over the trials in which both came. 1 is what independent trials would give; at a quarter they would need four
     * times as many trials for the same answer. NaN with fewer than two such trials or without any variance.
     */
    public double varianceRatio() {
        int[] both = IntStream.range(0, first.length)
                .filter(i -> Double.isFinite(first[i]) && Double.isFinite(second[i]))
                .toArray();
        double difference = variance(IntStream.of(both).mapToDouble(i -> second[i] - first[i]));
        return difference
                / (variance(IntStream.of(both).mapToDouble(i -> first[i]))
                        + variance(IntStream.of(both).mapToDouble(i -> second[i])));
    }

    private static double variance(DoubleStream values) {
        return Variance.of(values.toArray()).getAsDouble();
    }

    /**
     * Returns the trial in which the first was furthest ahead of the second, the earliest of equal ones; empty if it
     * never was ahead. Nothing is further ahead than arriving where the other does not.
     */
    public OptionalInt furthestAhead() {
        int furthest = -1;
        double lead = 0;
        for (int i = 0; i < first.length; i++) {
            if (!isNeither(i) && second[i] - first[i] > lead) {
                lead = second[i] - first[i];
                furthest = i;
            }
        }
        return furthest < 0 ? OptionalInt.empty() : OptionalInt.of(furthest);
    }

    private boolean isNeither(int trial) {
        return first[trial] == Double.POSITIVE_INFINITY && second[trial] == Double.POSITIVE_INFINITY;
    }

    private Proportion count(IntPredicate isHit) {
        return new Proportion(
                (int) IntStream.range(0, first.length).filter(isHit).count(), first.length);
    }
}
