package org.ionohaul.sheet;

import java.util.Locale;
import org.ionohaul.channel.MeterReading;

/** Levels as the meter of a set shows them, with what that is in dBm. */
final class LevelText {
    private LevelText() {}

    /** Returns a level such as {@code S7 (-85 dBm)}. */
    static String of(double dbm) {
        String plain = String.format(Locale.ROOT, "%,.1f", Math.rint(10 * dbm) / 10 + 0.0);
        return MeterReading.nearest(dbm) + " (" + plain.replaceAll("\\.0$", "") + " dBm)";
    }

    /** Returns a level for tables that say what stands in the brackets, such as {@code S7 (-85)}. */
    static String brief(double dbm) {
        return MeterReading.nearest(dbm) + " (" + Math.round(dbm) + ")";
    }
}
