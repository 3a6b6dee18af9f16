package org.ionohaul.link;

import org.ionohaul.channel.End;

/** What an operator or a squelch hears between overs: whether others use the channel. */
@FunctionalInterface
public interface ChannelWatch {
    /** A channel that nobody else uses. */
    ChannelWatch ALWAYS_CLEAR = (end, atNanos) -> false;

    /**
     * Returns whether the channel is occupied by others.
     *
     * @param end who listens
     * @param atNanos when, in nanoseconds since the trial began
     */
    boolean isOccupied(End end, long atNanos);
}
