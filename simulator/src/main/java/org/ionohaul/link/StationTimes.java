package org.ionohaul.link;

import org.ionohaul.limits.OutOfRange;

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
        requireNotNegative("hangNanos", hangNanos);
        requireNotNegative("relayNanos", relayNanos);
        requireNotNegative("recoveryNanos", recoveryNanos);
        requireNotNegative("processingNanos", processingNanos);
    }

    /** Returns how long after its last symbol it hears nothing yet, in nanoseconds. */
    public long deafNanos() {
        return hangNanos + relayNanos + recoveryNanos;
    }

    private static void requireNotNegative(String name, long nanos) {
        OutOfRange.unless(nanos >= 0, name, "must not be negative", nanos);
    }
}
