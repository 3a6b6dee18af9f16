package org.ionohaul.link;

import org.ionohaul.channel.End;
import org.ionohaul.channel.Reception;

/**
 * Everything that a link between two stations is made of.
 *
 * @param signals the mode's bursts
 * @param atNear how the near end hears the far one
 * @param atFar how the far end hears the near one
 * @param watch whether others occupy the channel
 * @param near how fast the near station changes between sending and receiving
 * @param far how fast the far station does
 * @param propagationNanos how long a signal travels, zero or more
 * @param arq how frames move
 * @param ladder how the speed level is chosen
 * @param curves the levels' frame loss on a steady path, as the mode's makers know it
 * @param oracle what the omniscient policy is told; others never ask
 * @param chances where chance comes from
 */
public record LinkParts(
        Signals signals,
        Reception atNear,
        Reception atFar,
        ChannelWatch watch,
        StationTimes near,
        StationTimes far,
        long propagationNanos,
        ArqRules arq,
        LadderRules ladder,
        LossCurves curves,
        Oracle oracle,
        Chances chances) {
    /** Checks propagation and start level. */
    public LinkParts {
        if (propagationNanos < 0) {
            throw new IllegalArgumentException("propagationNanos must not be negative: " + propagationNanos);
        }
        if (ladder.startLevel() < 1 || ladder.startLevel() > signals.levelCount()) {
            throw new IllegalArgumentException("startLevel must be from 1 to " + signals.levelCount() + ": " + ladder);
        }
    }

    /** Returns the times of the station at an end. */
    public StationTimes times(End end) {
        return end == End.NEAR ? near : far;
    }

    /** Returns how the station at an end hears the other. */
    public Reception reception(End end) {
        return end == End.NEAR ? atNear : atFar;
    }
}
