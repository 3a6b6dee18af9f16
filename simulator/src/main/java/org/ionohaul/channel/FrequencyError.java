package org.ionohaul.channel;

import org.ionohaul.limits.OutOfRange;

/**
 * By how much a frequency lies off, and how that changes: a station's from the one agreed on, or one station's from the other's.
 *
 * @param offsetHz by how much when the trial begins, in Hz, within 10 kHz
 * @param driftHzPerMinute by how much more each minute, in Hz, within 1 kHz
 */
public record FrequencyError(double offsetHz, double driftHzPerMinute) {
    /** Both on one frequency. */
    public static final FrequencyError NONE = new FrequencyError(0, 0);

    private static final double MOST_HZ = 10_000;
    private static final double MINUTE_NANOS = 60e9;

    /** Checks both values. */
    public FrequencyError {
        OutOfRange.unless(Math.abs(offsetHz) <= MOST_HZ, "offsetHz", "must be within 10 kHz", offsetHz);
        OutOfRange.unless(
                Math.abs(driftHzPerMinute) <= 1000,
                "driftHzPerMinute",
                "must be within 1 kHz a minute",
                driftHzPerMinute);
    }

    /** Returns it at an instant, in Hz. */
    public double hertzAt(long atNanos) {
        return offsetHz + driftHzPerMinute * (double) atNanos / MINUTE_NANOS;
    }

    /** Returns the same error for a trial that begins so many seconds later; may be negative. */
    FrequencyError startingAfter(double seconds) {
        double laterHz = offsetHz + driftHzPerMinute * seconds / 60;
        // Farther off nobody hears it either.
        return new FrequencyError(Math.max(-MOST_HZ, Math.min(MOST_HZ, laterHz)), driftHzPerMinute);
    }
}
