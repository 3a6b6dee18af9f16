package org.ionohaul.waveform;

/** What a receiver does about a narrow interferer within its band. */
public enum Excision {
    /** Nothing: it takes noise as even over the band, so that a narrow interferer counts with all its power everywhere. */
    NONE,
    /**
     * Each carrier counts by its own noise. What an interferer leaks into the other carriers is heard there: a symbol is too
     * short to tell them apart for certain.
     */
    WEIGHTING,
    /** A filter follows the interferer and takes it out with the part of the band it lies in; the rest is as if alone. */
    NOTCH
}
