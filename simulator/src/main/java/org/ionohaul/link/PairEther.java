package org.ionohaul.link;

import org.ionohaul.channel.End;
import org.ionohaul.channel.Reception;

/**
 * The ether of two stations: 0 dials, 1 is called. Neither's bursts disturb the other's, since who sends hears nothing; and each
 * knows its partner's burst from other stations', so that only these occupy the channel.
 *
 * @param atNear how the near end hears the far one
 * @param atFar how the far end hears the near one
 * @param watch whether others occupy the channel
 * @param propagationNanos how long a signal travels, zero or more
 */
public record PairEther(Reception atNear, Reception atFar, ChannelWatch watch, long propagationNanos) implements Ether {
    /** Number of the station that dials. */
    public static final int NEAR = 0;

    /** Number of the station that is called. */
    public static final int FAR = 1;

    /** Checks the propagation time. */
    public PairEther {
        if (propagationNanos < 0) {
            throw new IllegalArgumentException("propagationNanos must not be negative: " + propagationNanos);
        }
    }

    @Override
    public boolean reaches(int from, int at) {
        return true;
    }

    @Override
    public long propagationNanos(int from, int at) {
        return propagationNanos;
    }

    @Override
    public Reception reception(int from, int at, Transmissions onAir) {
        return at == NEAR ? atNear : atFar;
    }

    @Override
    public boolean isOccupied(int at, long fromNanos, long untilNanos, Transmissions onAir) {
        return watch.isOccupied(at == NEAR ? End.NEAR : End.FAR, fromNanos, untilNanos);
    }
}
