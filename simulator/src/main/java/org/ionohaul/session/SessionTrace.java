package org.ionohaul.session;

import org.ionohaul.channel.End;
import org.ionohaul.link.LinkTrace;

/** Watches a session from outside, knowing both ends. Watching changes nothing. */
public interface SessionTrace extends LinkTrace {
    /** Nobody watches. */
    SessionTrace NONE = new SessionTrace() {};

    /**
     * A stretch of the dialling station's time has gone to a cause; stretches follow one another without a gap.
     *
     * @param fromNanos when it began, in nanoseconds since the trial began
     * @param untilNanos when it ended
     */
    default void onSpent(Cause cause, long fromNanos, long untilNanos) {}

    /** The dialling station has heard the answer to its call. */
    default void onLinked(long atNanos) {}

    /** A station has noticed that the link is lost. */
    default void onLost(End at, long atNanos) {}

    /**
     * The receiver holds more bytes in order than ever before, right or wrong.
     *
     * @param bytes how many, counted from the beginning of the transfer
     */
    default void onProgress(long bytes, long atNanos) {}

    /** The receiver holds a file, counted from 0, to its last byte. */
    default void onDelivered(int file, long atNanos) {}

    /** The receiver holds a file, counted from 0, to its last byte, and some of it is wrong, which nobody knows. */
    default void onDeliveredWrong(int file, long atNanos) {}

    /**
     * The sender takes a file, counted from 0, for delivered of which the end is missing, since it took an answer for its
     * opposite.
     */
    default void onCutShort(int file, long atNanos) {}

    /** The sender knows that a file, counted from 0, is delivered. */
    default void onConfirmed(int file, long atNanos) {}

    /** A station has hung up knowing that all is done. */
    default void onHungUp(End at, long atNanos) {}

    /** The session has ended for the station that dialled; not told when the horizon cuts it off. */
    default void onEnded(Ending why, long atNanos) {}
}
