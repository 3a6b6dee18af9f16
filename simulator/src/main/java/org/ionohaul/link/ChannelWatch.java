package org.ionohaul.link;

import org.ionohaul.channel.End;

/** What an operator or a squelch hears between overs: whether others use the channel. */
@FunctionalInterface
public interface ChannelWatch {
    /** A channel that nobody else uses. */
    ChannelWatch ALWAYS_CLEAR = (end, fromNanos, untilNanos) -> false;

    /**
     * Returns whether the channel is occupied by others without a break.
     *
     * @param end who listens
     * @param fromNanos since when, in nanoseconds since the trial began, zero or more
     * @param untilNanos until when, included; the same instant for one look
     */
    boolean isOccupied(End end, long fromNanos, long untilNanos);
}
