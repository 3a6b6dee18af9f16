package org.ionohaul.session;

/** What a stretch of a session's time was spent on; each nanosecond belongs to exactly one cause. */
public enum Cause {
    /** From pressing send to the first answered call, pauses included. */
    DIALLING,
    /** Introductions, offers and their answers. */
    INTRODUCTIONS,
    /** Preambles of overs that carry frames. */
    PREAMBLES,
    /** Frames on the air for the first time, with their interleaver fill. */
    NEW_PAYLOAD,
    /** Frames on the air again. */
    REPEATED_PAYLOAD,
    /** Acknowledgements and polls on the air. */
    ACKNOWLEDGEMENTS,
    /** Hang, relay, recovery, propagation and processing between overs. */
    TURNAROUNDS,
    /** Waiting in vain for an acknowledgement or for a clear channel. */
    SILENCE,
    /** From noticing that a link is lost to the next answered call. */
    REDIALLING,
    /** From the last confirmation to the end. */
    HANGING_UP
}
