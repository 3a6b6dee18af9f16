package org.ionohaul.report;

import java.util.List;

/**
 * A scale on which equal ratios are equal lengths.
 *
 * @param low its beginning, positive
 * @param high its end, above {@code low}
 */
record LogScale(double low, double high) {
    LogScale {
        if (!(low > 0 && high > low && high < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a scale must rise from above zero: " + low + ", " + high);
        }
    }

    /** Returns where a value lies, as a share of the scale's length; values beyond it lie below 0 or above 1. */
    double share(double value) {
        return Math.log(value / low) / Math.log(high / low);
    }

    /** Returns those of the marks that lie on the scale. */
    List<Double> among(List<Double> marks) {
        return marks.stream().filter(it -> it >= low && it <= high).toList();
    }
}
