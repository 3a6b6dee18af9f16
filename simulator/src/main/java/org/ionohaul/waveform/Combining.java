package org.ionohaul.waveform;

/** What a receiver does with a frame that failed when it comes again. */
public enum Combining {
    /** Each reception stands alone. */
    NONE,
    /** Copies are added before decoding: their SINRs add. */
    CHASE,
    /** Each copy brings new code bits: mutual information adds and the effective code rate falls. */
    INCREMENTAL_REDUNDANCY
}
