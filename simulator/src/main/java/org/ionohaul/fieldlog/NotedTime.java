package org.ionohaul.fieldlog;

import org.ionohaul.limits.OutOfRange;

/**
 * A length of time as somebody wrote it down, which is known to within a step.
 *
 * @param seconds what was written, from pressing send, zero or more
 * @param stepSeconds how finely it was written, positive
 * @param rounding which way it was rounded
 */
public record NotedTime(double seconds, double stepSeconds, Rounding rounding) {
    private static final double LONGEST_SECONDS = 86_400;

    /** Checks both numbers. */
    public NotedTime {
        OutOfRange.unless(seconds >= 0 && seconds <= LONGEST_SECONDS, "seconds", "must be from 0 to 24 h", seconds);
        OutOfRange.unless(
                stepSeconds > 0 && stepSeconds <= 3600, "stepSeconds", "must be above 0 and at most 1 h", stepSeconds);
    }

    /** Returns the least that the true time may have been, in seconds; zero or more. */
    public double lowSeconds() {
        double below = rounding == Rounding.NEAREST ? 0.5 : rounding == Rounding.UP ? 1 : 0;
        return Math.max(0, seconds - below * stepSeconds);
    }

    /** Returns the most that the true time may have been, in seconds. */
    public double highSeconds() {
        double above = rounding == Rounding.NEAREST ? 0.5 : rounding == Rounding.DOWN ? 1 : 0;
        return seconds + above * stepSeconds;
    }

    /**
     * Returns how the same person with the same watch would have written another time.
     *
     * @param trueSeconds zero or more; a day if it is more
     */
    public NotedTime written(double trueSeconds) {
        double steps = trueSeconds / stepSeconds;
        double whole = rounding == Rounding.NEAREST
                ? Math.rint(steps)
                : rounding == Rounding.UP ? Math.ceil(steps) : Math.floor(steps);
        return new NotedTime(Math.min(LONGEST_SECONDS, whole * stepSeconds), stepSeconds, rounding);
    }
}
