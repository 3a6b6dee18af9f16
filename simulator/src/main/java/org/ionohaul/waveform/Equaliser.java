package org.ionohaul.waveform;

/**
 * How a receiver undoes the echoes in symbols that fill the band ({@link Coding#fillsBand()}). Of several carriers each is
 * undone by itself, and of tones none: there the choice means nothing.
 */
public enum Equaliser {
    /**
     * Each part of the band counts by its own ratio, as if it were a carrier of its own: for what is not known to be one of
     * the others. Were symbols Gaussian, it would be as good as decision feedback; of few phases or levels, that saturate, a
     * faint part costs more than it costs those that an equaliser adds up over the band.
     */
    BY_PARTS,
    /**
     * One ratio, the highest that any equaliser leaves: a filter for what is to come, and what was decided taken off without
     * fault.
     */
    DECISION_FEEDBACK,
    /** One ratio, that of a filter alone, which raises the noise where the path is faint: a notch costs all symbols. */
    LINEAR;

    /** Returns whether all parts of the band come to one ratio. */
    boolean leavesOneRatio() {
        return this != BY_PARTS;
    }
}
