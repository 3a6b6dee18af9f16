package org.ionohaul.statistics;

import java.util.List;
import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * Mean of independent values that lie from 0 to 1, such as shares of a few hits or squared errors of a chance.
 *
 * <p>Of all such values with a given mean those that are 0 or 1 scatter most, and their sum is binomial; so the exact interval
 * for a share (C. J. Clopper and E. S. Pearson, Biometrika 26, 1934), with the sum of the values in place of the hits, is if
 * anything too wide. That it is for sums between two whole numbers, too, is no theorem: the test counts it.
 */
public final class BoundedMean {
    private BoundedMean() {}

    /**
     * Returns the mean with its interval.
     *
     * @param values at least one, each from 0 to 1
     * @param confidence chance that the interval covers the true mean, above 0, below 1
     */
    public static Estimate of(List<Double> values, double confidence) {
        if (values.isEmpty() || !values.stream().allMatch(it -> it >= 0 && it <= 1)) {
            throw new IllegalArgumentException("needs values from 0 to 1: " + values);
        }
        int count = values.size();
        double sum = values.stream().mapToDouble(it -> it).sum();
        double mean = Math.min(1, sum / count);
        double outside = (1 - confidence) / 2;
        double low = sum <= 0 ? 0 : BetaDistribution.of(sum, count - sum + 1).inverseCumulativeProbability(outside);
        double high =
                sum >= count ? 1 : BetaDistribution.of(sum + 1, count - sum).inverseSurvivalProbability(outside);
        return new Estimate(mean, Math.min(mean, low), Math.max(mean, high));
    }
}
