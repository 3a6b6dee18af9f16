package org.ionohaul.statistics;

import java.util.Arrays;
import org.apache.commons.statistics.descriptive.Quantile;
import org.apache.commons.statistics.descriptive.Quantile.EstimationMethod;

/**
 * A sample in rising order, with what it says about the population's quantiles.
 *
 * <p>An observation that never happened, or not within the time watched, is positive infinity. It is counted like any
 * other, never dropped: a quantile that falls among those is infinite, which reads "not reached". Nothing is
 * interpolated, so that this stays exact.
 */
public final class OrderedSample {
    /** How a quantile is defined here, for people to read. */
    public static final String QUANTILE_DEFINITION =
            "the p-quantile of n trials is the smallest observed value that at least n p of them do not exceed"
                    + " (inverse of the empirical distribution, type 1 of Hyndman and Fan 1996); trials that never"
                    + " got there count as infinite";

    private static final Quantile INVERSE_OF_DISTRIBUTION =
            Quantile.withDefaults().with(EstimationMethod.HF1);

    private final double[] rising;

    private OrderedSample(double[] rising) {
        this.rising = rising;
    }

    /**
     * Returns the sample of these values.
     *
     * @param values at least one, in any order, none of them NaN; copied
     */
    public static OrderedSample of(double[] values) {
        double[] rising = values.clone();
        Arrays.sort(rising);
        // NaN sorts last.
        if (rising.length == 0 || Double.isNaN(rising[rising.length - 1])) {
            throw new IllegalArgumentException("a sample needs at least one value and no NaN; size " + rising.length);
        }
        return new OrderedSample(rising);
    }

    /** Returns how many observations there are, 1 or more. */
    public int size() {
        return rising.length;
    }

    /** Returns an observation by its place in rising order; {@code index} from 0 to below {@link #size()}. */
    public double at(int index) {
        return rising[index];
    }

    /**
     * Returns the quantile of the sample, see {@link #QUANTILE_DEFINITION}.
     *
     * @param probability from 0 to 1
     */
    public double quantile(double probability) {
        return INVERSE_OF_DISTRIBUTION.evaluate(rising.length, this::at, probability);
    }

    /**
     * Returns the quantile with a distribution-free interval for the population's, see {@link RankInterval}; ends
     * beyond the sample are infinite.
     *
     * @param probability above 0, below 1
     * @param confidence chance of covering the population's quantile at least, above 0, below 1
     */
    public Estimate quantile(double probability, double confidence) {
        RankInterval ranks = RankInterval.of(rising.length, probability, confidence);
        return new Estimate(quantile(probability), ranked(ranks.lower()), ranked(ranks.upper()));
    }

    /** Returns how many observations are at most the limit. */
    public Proportion atMost(double limit) {
        int low = 0;
        int high = rising.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (rising[middle] <= limit) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return new Proportion(low, rising.length);
    }

    private double ranked(int rank) {
        if (rank < 1) {
            return Double.NEGATIVE_INFINITY;
        }
        return rank > rising.length ? Double.POSITIVE_INFINITY : rising[rank - 1];
    }
}
