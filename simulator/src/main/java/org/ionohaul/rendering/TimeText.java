package org.ionohaul.rendering;

/**
 * Words for lengths of time.
 *
 * <p>People plan in minutes and read a clock; nobody plans in seconds with decimals.
 */
public final class TimeText {
    private static final int MINUTE = 60;
    private static final int HOUR = 60 * MINUTE;
    /** Below this, a plan in whole minutes would be too coarse. */
    private static final int PLANNED_IN_SECONDS = 2 * MINUTE;

    private static final int PLANNED_IN_HALF_MINUTES = 10 * MINUTE;

    private TimeText() {}

    /**
     * Returns a difference of lengths, such as {@code 4 min 20 s} or {@code -12 s}.
     *
     * @param seconds finite
     */
    public static String signed(double seconds) {
        return (seconds < 0 && Math.round(-seconds) > 0 ? "-" : "") + length(Math.abs(seconds));
    }

    /**
     * Returns a range of differences, such as {@code -12 s to 4 min 20 s}; empty if an end is open or both are written alike.
     */
    public static String range(double low, double high) {
        if (!Double.isFinite(low) || !Double.isFinite(high) || signed(low).equals(signed(high))) {
            return "";
        }
        return signed(low) + " to " + signed(high);
    }

    /** Returns such a range in brackets, with a space before; empty if it is. */
    public static String inBrackets(double low, double high) {
        String range = range(low, high);
        return range.isEmpty() ? "" : " (" + range + ")";
    }

    /**
     * Returns a length as a promise that errs on the safe side, such as {@code 17 min} or {@code 4 min 30 s}: rounded up to
     * whole minutes, to half ones below ten minutes, to ten seconds below two.
     *
     * @param seconds zero or more, finite
     */
    public static String plan(double seconds) {
        double length = requireLength(seconds);
        long tens = roundedUp(length, 10);
        return tens < PLANNED_IN_SECONDS
                ? tens + " s"
                : length((double) roundedUp(length, length <= PLANNED_IN_HALF_MINUTES ? MINUTE / 2 : MINUTE));
    }

    private static long roundedUp(double seconds, int step) {
        return (long) Math.ceil(seconds / step) * step;
    }

    /**
     * Returns a length as people say it when they set it themselves, such as {@code 90 s}, {@code 20 min} or
     * {@code 1 h 30 min}.
     *
     * @param seconds zero or more, finite
     */
    public static String given(double seconds) {
        long whole = Math.round(requireLength(seconds));
        if (whole % MINUTE != 0) {
            return whole < HOUR ? whole + " s" : length(seconds);
        }
        if (whole < 2 * HOUR && whole % HOUR != 0) {
            return whole / MINUTE + " min";
        }
        String hours = whole / HOUR + " h";
        return whole % HOUR == 0 ? hours : hours + " " + whole % HOUR / MINUTE + " min";
    }

    /**
     * Returns a length that can't be read as a time of day, such as {@code 45 s}, {@code 7 min 11 s} or {@code 1 h 5 min},
     * rounded to the nearest second or, from an hour on, minute.
     *
     * @param seconds zero or more, finite
     */
    public static String length(double seconds) {
        long whole = Math.round(requireLength(seconds));
        if (whole < HOUR) {
            return whole < MINUTE ? whole + " s" : whole / MINUTE + " min" + more(whole % MINUTE, "s");
        }
        long minutes = Math.round(seconds / MINUTE);
        return minutes / MINUTE + " h" + more(minutes % MINUTE, "min");
    }

    /**
     * Returns the same rounded up: no less than what it stands for.
     *
     * @param seconds zero or more, finite
     */
    public static String lengthRoundedUp(double seconds) {
        return length((double) roundedUp(requireLength(seconds), seconds > HOUR ? MINUTE : 1));
    }

    private static String more(long count, String unit) {
        return count == 0 ? "" : " " + count + " " + unit;
    }

    private static double requireLength(double seconds) {
        if (!(seconds >= 0 && seconds < 1e12)) {
            throw new IllegalArgumentException("seconds must be zero or more and finite: " + seconds);
        }
        return seconds;
    }
}
