package org.ionohaul.channel;

import org.apache.commons.statistics.descriptive.Quantile;

/**
 * The middle of a sample and the values that a tenth of it lies below and above.
 *
 * @param low the lower decile
 * @param median the median
 * @param high the upper decile
 */
public record Deciles(double low, double median, double high) {
    /** Returns those of a sample of at least one value, interpolated between its values. */
    public static Deciles of(double[] sample) {
        double[] quantiles = Quantile.withDefaults().evaluate(sample, 0.1, 0.5, 0.9);
        return new Deciles(quantiles[0], quantiles[1], quantiles[2]);
    }
}
