package org.ionohaul.link;

/**
 * How fast one station changes between sending and receiving.
 *
 * @param hangNanos how long its transmitter stays up after the last symbol, zero or more
 * @param relayNanos how long its relays need to change over, either way, zero or more
 * @param recoveryNanos how long its receiver is deaf after the relays have changed, zero or more
 * @param processingNanos how long its equipment thinks before it answers, zero or more
 */
public record StationTimes(long hangNanos, long relayNanos, long recoveryNanos, long processingNanos) {
    /** Checks every value. */
    public StationTimes {
        if (hangNanos < 0 || relayNanos < 0 || recoveryNanos < 0 || processingNanos < 0) {
            throw new IllegalArgumentException("times must not be negative: " + hangNanos + ", " + relayNanos + ", "
                    + recoveryNanos + ", " + processingNanos);
        }
    }
}
