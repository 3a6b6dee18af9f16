package org.ionohaul.statistics;

import org.apache.commons.statistics.descriptive.Mean;
import org.apache.commons.statistics.descriptive.Variance;
import org.apache.commons.statistics.distribution.TDistribution;

/** The mean of independent values that are seen one after the other, and how sure it is; only the sums are kept. */
public final class RunningMean {
    private final Mean mean = Mean.create();
    private final Variance variance = Variance.create();
    private int count;

    /** Adds a value, finite. */
    public void add(double value) {
        mean.accept(value);
        variance.accept(value);
        count++;
    }

    /** Returns how many values were added. */
    public int count() {
        return count;
    }

    /** Returns their mean; NaN without any. */
    public double mean() {
        return mean.getAsDouble();
    }

    /**
     * Returns what the true mean is above (Student's one-sided bound); needs two values.
     *
     * @param confidence chance that it is above, from 0.5 to below 1
     */
    public double lowerBound(double confidence) {
        double error = Math.sqrt(variance.getAsDouble() / count);
        return mean() - error * TDistribution.of(count - 1.0).inverseCumulativeProbability(confidence);
    }
}
