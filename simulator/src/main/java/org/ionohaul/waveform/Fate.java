package org.ionohaul.waveform;

/** What becomes of a frame. */
public enum Fate {
    /** It is not decoded, and the receiver knows. */
    LOST,
    /** It is taken as decoded and is wrong: its check noticed nothing. */
    WRONG,
    /** It is decoded. */
    RIGHT
}
