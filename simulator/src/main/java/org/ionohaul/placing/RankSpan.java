package org.ionohaul.placing;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Where a run lies among simulated ones: the probability integral transform, which is a range where rounding, ties or
 * censoring leave it open.
 *
 * @param low share of the simulated runs that are quicker for sure, from 0 to 1
 * @param high share of those that may be no slower, from {@code low} to 1
 */
public record RankSpan(double low, double high) {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    /**
     * Returns where a span of places lies.
     *
     * @param rising places of the simulated runs, in rising order
     */
    static RankSpan of(Slowness.Span span, double[] rising) {
        double below = countBelow(rising, span.low());
        double upTo = countBelow(rising, Math.nextUp(span.high()));
        return new RankSpan(below / (rising.length + 1), (upTo + 1) / (rising.length + 1));
    }

    private static int countBelow(double[] rising, double place) {
        int low = 0;
        int high = rising.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (rising[middle] < place) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Returns the middle of the range. */
    public double middle() {
        return (low + high) / 2;
    }

    /** Returns the mean of the standard normal score over the range: what a point drawn from it would score on average. */
    double score() {
        return (density(low) - density(high)) / (high - low);
    }

    /** Returns the mean square of the standard normal score over the range. */
    double squareScore() {
        return 1 + (weighted(low) - weighted(high)) / (high - low);
    }

    /** The density at the quantile; the antiderivative of the score over probability is its negative. */
    private static double density(double probability) {
        return probability <= 0 || probability >= 1
                ? 0
                : NORMAL.density(NORMAL.inverseCumulativeProbability(probability));
    }

    private static double weighted(double probability) {
        return probability <= 0 || probability >= 1
                ? 0
                : NORMAL.inverseCumulativeProbability(probability) * density(probability);
    }

    /** Returns the range of what stands at one place among others, as {@link #of} would if it were not among them. */
    static RankSpan among(Slowness.Span span, double[] rising) {
        double below = countBelow(rising, span.low());
        double upTo = Math.max(below + 1, countBelow(rising, Math.nextUp(span.high())));
        return new RankSpan(below / rising.length, upTo / rising.length);
    }

    static double[] rising(double[] places) {
        double[] rising = places.clone();
        Arrays.sort(rising);
        return rising;
    }
}
