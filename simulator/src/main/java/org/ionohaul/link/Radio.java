package org.ionohaul.link;

import org.ionohaul.limits.OutOfRange;

/**
 * What a link must know of one station's radio.
 *
 * @param times how fast it changes between sending and receiving
 * @param foldBack how its power falls in long overs
 * @param busyDetectionNanos how long it must hear others without a break before it takes the channel for occupied, zero or
 *     more; 0 for one look
 */
public record Radio(StationTimes times, FoldBack foldBack, long busyDetectionNanos) {
    /** Checks the time. */
    public Radio {
        OutOfRange.unless(busyDetectionNanos >= 0, "busyDetectionNanos", "must not be negative", busyDetectionNanos);
    }

    /** Returns a radio that keeps its power up and finds out at a look whether the channel is occupied. */
    public static Radio of(StationTimes times) {
        return new Radio(times, FoldBack.NEVER, 0);
    }
}
