package org.ionohaul.net;

import org.ionohaul.channel.Reception;

/** How well the stations of a net hear each other, the gateway being number 0. */
public interface Audibility {
    /** Returns how many stations there are, the gateway among them. */
    int stations();

    /** Returns how a station hears another; one of them is the gateway. */
    Reception reception(int from, int at);

    /**
     * Returns the power of a station's steady carrier at another, averaged over fast fading, over the usual noise floor there in
     * 3 kHz, linear.
     */
    double meanSignal(int from, int at, long atNanos);

    /** Returns how long a signal travels from a station to another, in nanoseconds, zero or more. */
    long propagationNanos(int from, int at);

    /**
     * Returns whether others than the net's stations occupy the channel at a station without a break.
     *
     * @param fromNanos since when, in nanoseconds since the trial began, zero or more
     * @param untilNanos until when, included
     */
    boolean isOccupiedByOthers(int at, long fromNanos, long untilNanos);
}
