package org.ionohaul.trial;

/** From the seconds that people write to the nanoseconds that the engine counts. */
final class Nanos {
    private Nanos() {}

    /**
     * Returns the nearest whole number of nanoseconds.
     *
     * @throws IllegalArgumentException if it is negative, not a number or beyond the clock's range of 292 years
     */
    static long of(double seconds) {
        if (!(seconds >= 0 && seconds < 9.2e9)) {
            throw new IllegalArgumentException("seconds must be from 0 to 9.2e9: " + seconds);
        }
        return Math.round(seconds * 1e9);
    }
}
