package org.ionohaul.statistics;

/**
 * A number estimated from a sample, and the interval that covers the true one with the asked confidence.
 *
 * @param value the estimate; infinite when the quantile asked for was not reached
 * @param low lower end, at most {@code value}
 * @param high upper end, at least {@code value}; infinite when the sample sets no upper limit
 */
public record Estimate(double value, double low, double high) {
    /** Confidence of every interval that is shown or stops a study. */
    public static final double CONFIDENCE = 0.95;

    /** Checks the order of the three numbers. */
    public Estimate {
        if (!(low <= value && value <= high)) {
            throw new IllegalArgumentException("not in order: " + low + ", " + value + ", " + high);
        }
    }
}
