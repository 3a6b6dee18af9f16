package org.ionohaul.rendering;

/** Levels and ratios of power in words. */
public final class DecibelText {
    private DecibelText() {}

    /** Returns a level or ratio rounded to a whole decibel, such as {@code -3 dB}. */
    public static String whole(double db) {
        return Math.round(db) + " dB";
    }
}
