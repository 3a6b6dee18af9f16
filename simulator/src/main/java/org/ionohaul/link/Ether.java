package org.ionohaul.link;

import org.ionohaul.channel.Reception;

/**
 * Who hears whom on a channel, how well and how late: the one view of the sky that a {@link Medium} has. Stations are numbered
 * from 0. It may let the stations' own transmissions disturb one another, or hide stations from each other.
 */
public interface Ether {
    /** Returns whether anything of what a station sends arrives at another. */
    boolean reaches(int from, int at);

    /** Returns how long a signal travels from a station to another, in nanoseconds, zero or more; always the same. */
    long propagationNanos(int from, int at);

    /**
     * Returns how a station hears another.
     *
     * @param onAir all transmissions that may overlap, the heard one and the listener's own among them; changes later
     */
    Reception reception(int from, int at, Transmissions onAir);

    /**
     * Returns whether a station that listens before it sends finds the channel occupied without a break.
     *
     * @param at who listens
     * @param fromNanos since when, in nanoseconds since the trial began, zero or more
     * @param untilNanos until when, included; the same instant for one look
     * @param onAir all transmissions that may be heard at the end of that time
     */
    boolean isOccupied(int at, long fromNanos, long untilNanos, Transmissions onAir);
}
