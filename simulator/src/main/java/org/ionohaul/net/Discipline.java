package org.ionohaul.net;

import org.ionohaul.limits.OutOfRange;

/**
 * What the stations of a net have agreed on.
 *
 * @param access who may call when
 * @param order which message goes first, at a station and, where the gateway gives turns, over all
 * @param slotNanos length of each station's time on the roster, positive
 * @param messagesACall most messages that a station hands over in one call, 1 or more
 */
public record Discipline(Access access, Order order, long slotNanos, int messagesACall) {
    /** Checks both numbers. */
    public Discipline {
        OutOfRange.unless(slotNanos > 0, "slotNanos", "must be above 0", slotNanos);
        OutOfRange.unless(
                messagesACall >= 1 && messagesACall <= 200, "messagesACall", "must be from 1 to 200", messagesACall);
    }

    /**
     * Returns how long a station waits for its time on the roster, in nanoseconds; nothing if it has come.
     *
     * @param station from 1 on
     * @param stations how many share the roster
     */
    long untilTurnNanos(int station, int stations, long nowNanos) {
        long roundNanos = Math.multiplyExact(slotNanos, (long) stations);
        long sinceNanos = Math.floorMod(nowNanos - slotNanos * (station - 1), roundNanos);
        return sinceNanos < slotNanos ? 0 : roundNanos - sinceNanos;
    }
}
