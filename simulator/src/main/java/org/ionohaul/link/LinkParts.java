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
 * @param ratePolicy how the data rate is chosen
 * @param curves the data rates' frame loss on a steady path, as the mode's makers know it
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
        RatePolicyRules ratePolicy,
        LossCurves curves,
        Oracle oracle,
        Chances chances) {
    /** Checks propagation and start data rate. */
    public LinkParts {
        if (propagationNanos < 0) {
            throw new IllegalArgumentException("propagationNanos must not be negative: " + propagationNanos);
        }
        if (ratePolicy.startDataRate() < 1 || ratePolicy.startDataRate() > signals.dataRateCount()) {
            throw new IllegalArgumentException(
                    "startDataRate must be from 1 to " + signals.dataRateCount() + ": " + ratePolicy);
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
