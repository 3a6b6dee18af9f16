package org.ionohaul.trace;

import org.ionohaul.channel.End;
import org.ionohaul.session.TimeBudget;

/**
 * One thing that happened in a session.
 *
 * @param kind what kind of thing
 * @param atNanos when it began, in nanoseconds since the trial began
 * @param untilNanos when it ended; equal to the beginning for what takes no time
 * @param at the station it happened to; of a burst, the sender
 * @param says what it was, in words
 * @param dataRate data rate of an over or chosen for it, counted from 1; 0 if none
 * @param frames frames sent; 0 if no burst
 * @param framesAgain of these, how many had been on the air before
 * @param framesDecoded of these, how many were decoded
 * @param isHeard whether the burst was heard and understood by the other station
 * @param sinrDb true SINR in 3 kHz over the burst at the other station, in dB; NaN if no burst
 * @param heldBytes bytes the receiver had held in order at best until then
 * @param spent where the time had gone until then
 */
record TraceStep(
        Kind kind,
        long atNanos,
        long untilNanos,
        End at,
        String says,
        int dataRate,
        int frames,
        int framesAgain,
        int framesDecoded,
        boolean isHeard,
        double sinrDb,
        long heldBytes,
        TimeBudget spent) {
    /** Kinds of things that happen. */
    enum Kind {
        /** A burst travelled. */
        BURST,
        /** A data rate was chosen. */
        DATA_RATE,
        /** An answer did not come. */
        SILENCE,
        /** Others occupied the channel. */
        OCCUPIED,
        /** A transmitter folded its power back. */
        POWER,
        /** The session came to a new stage: linked, lost, delivered, confirmed, hung up, ended. */
        STAGE
    }

    TraceStep withHeldBytes(long bytes) {
        return new TraceStep(
                kind,
                atNanos,
                untilNanos,
                at,
                says,
                dataRate,
                frames,
                framesAgain,
                framesDecoded,
                isHeard,
                sinrDb,
                bytes,
                spent);
    }
}
