package org.ionohaul.rendering;

import java.util.Locale;

/** Levels and ratios of power in words. */
public final class DecibelText {
    private DecibelText() {}

    /** Returns a level or ratio rounded to a whole decibel, such as {@code -3 dB}. */
    public static String whole(double db) {
        return Math.round(db) + " dB";
    }

    /** Returns what is needed to a tenth of a decibel, such as {@code -11.9 dB}; {@code never} if nothing is enough. */
    public static String need(double db) {
        return Double.isInfinite(db) ? "never" : String.format(Locale.ROOT, "%.1f dB", db);
    }
}
