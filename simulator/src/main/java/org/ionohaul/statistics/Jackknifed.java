package org.ionohaul.statistics;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * A number that a sample comes to, and what it would come to without one block of the sample after the other: the grouped
 * jackknife (J. W. Tukey, Ann. Math. Stat. 29, 1958; B. Efron, "The Jackknife, the Bootstrap and Other Resampling Plans",
 * 1982), which tells how sure a smooth function of a sample is without any formula for it.
 */
public final class Jackknifed {
    /** Into how many blocks a sample is cut: 24 degrees of freedom for the error. */
    public static final int BLOCKS = 25;

    private final double value;
    private final double[] leftOut;

    private Jackknifed(double value, double[] leftOut) {
        this.value = value;
        this.leftOut = leftOut;
    }

    /**
     * Returns what a sample comes to.
     *
     * @param value of the whole sample
     * @param without value without a block, from 0 to below {@link #BLOCKS}
     */
    public static Jackknifed of(double value, IntToDoubleFunction without) {
        return new Jackknifed(
                value, IntStream.range(0, BLOCKS).mapToDouble(without).toArray());
    }

    /** Returns the mean of a sample whose i-th value belongs to block {@code i} modulo {@link #BLOCKS}. */
    public static Jackknifed mean(double[] values) {
        return of(
                Arrays.stream(values).average().orElseThrow(),
                block -> IntStream.range(0, values.length)
                        .filter(i -> i % BLOCKS != block)
                        .mapToDouble(i -> values[i])
                        .average()
                        .orElseThrow());
    }

    /** Returns a number that is known, whatever the sample. */
    public static Jackknifed constant(double value) {
        return of(value, block -> value);
    }

    /** Returns what the whole sample comes to. */
    public double value() {
        return value;
    }

    /** Returns the sum of two numbers of the same sample. */
    public Jackknifed plus(Jackknifed other) {
        return combined(other, Double::sum);
    }

    /** Returns the difference of two numbers of the same sample. */
    public Jackknifed minus(Jackknifed other) {
        return combined(other, (a, b) -> a - b);
    }

    /** Returns the product of two numbers of the same sample. */
    public Jackknifed times(Jackknifed other) {
        return combined(other, (a, b) -> a * b);
    }

    private Jackknifed combined(Jackknifed other, DoubleBinaryOperator operator) {
        return of(
                operator.applyAsDouble(value, other.value),
                block -> operator.applyAsDouble(leftOut[block], other.leftOut[block]));
    }

    /** Returns the standard error. */
    public double standardError() {
        double mean = Arrays.stream(leftOut).average().orElseThrow();
        double squares =
                DoubleStream.of(leftOut).map(it -> (it - mean) * (it - mean)).sum();
        return Math.sqrt(squares * (BLOCKS - 1) / BLOCKS);
    }

    /**
     * Returns the number with its interval (Student's t), all three cut to a range that the true one can't leave.
     *
     * @param confidence chance that the interval covers the true number, above 0, below 1
     */
    public Estimate within(double least, double most, double confidence) {
        double reach =
                standardError() * TDistribution.of(BLOCKS - 1.0).inverseSurvivalProbability((1 - confidence) / 2);
        return new Estimate(cut(value, least, most), cut(value - reach, least, most), cut(value + reach, least, most));
    }

    private static double cut(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }
}
