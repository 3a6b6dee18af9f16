package org.ionohaul.waveform;

/** Power ratios as logarithms and back, in one place. */
final class Decibels {
    private Decibels() {}

    /** Returns the linear power ratio of a level in dB. */
    static double toRatio(double db) {
        return Math.pow(10, db / 10);
    }

    /** Returns the level in dB of a linear power ratio; minus infinity for zero. */
    static double of(double ratio) {
        return 10 * Math.log10(ratio);
    }
}
