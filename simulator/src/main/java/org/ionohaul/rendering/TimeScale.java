package org.ionohaul.rendering;

import java.util.ArrayList;
import java.util.List;

/**
 * A straight scale of time from zero to its end, with marks at lengths that people count in.
 *
 * @param endSeconds its end, positive
 */
public record TimeScale(double endSeconds) {
    private static final double[] STEPS_SECONDS = {
        1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 10800, 21600, 43200, 86400
    };

    /** Checks that the scale has a length. */
    public TimeScale {
        if (!(endSeconds > 0 && endSeconds < 1e9)) {
            throw new IllegalArgumentException("endSeconds must be positive: " + endSeconds);
        }
    }

    /** Returns the marks, zero first, as many as fit but no more than asked for. */
    public List<Double> marksSeconds(int atMost) {
        double step = STEPS_SECONDS[STEPS_SECONDS.length - 1];
        for (int i = STEPS_SECONDS.length - 1; i >= 0 && endSeconds / STEPS_SECONDS[i] < atMost; i--) {
            step = STEPS_SECONDS[i];
        }
        List<Double> marks = new ArrayList<>();
        for (int i = 0; i * step <= endSeconds * 1.0001; i++) {
            marks.add(i * step);
        }
        return marks;
    }

    /** Returns where an instant lies, as a share of the scale's length; the scale ends at 1. */
    public double share(double seconds) {
        return seconds / endSeconds;
    }

    /** Returns whether the scale counts in minutes; else in seconds. */
    private boolean isInMinutes() {
        return endSeconds > 120;
    }

    /** Returns an instant in the scale's unit. */
    public double inUnit(double seconds) {
        return isInMinutes() ? seconds / 60 : seconds;
    }

    /** Returns how the scale writes an instant: a bare number of its unit. */
    public String label(double seconds) {
        double count = inUnit(seconds);
        return count == Math.rint(count) ? Long.toString((long) count) : Double.toString(count);
    }

    /** Returns the unit of the labels. */
    public String unit() {
        return isInMinutes() ? "minutes" : "seconds";
    }
}
