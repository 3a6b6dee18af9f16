package org.ionohaul.trace;

import java.util.List;
import java.util.Locale;

/**
 * Colours and dashes that tell series apart, also for colour-blind eyes and on black-and-white paper.
 *
 * <p>The colours are the set of Okabe and Ito, "Color Universal Design" (2008), without its yellow, which is too faint
 * on white; lines differ by dash as well, since colour must never be the only difference.
 */
final class Palette {
    /** Text and axes. */
    public static final String INK = "#1b1f23";

    /** Text of less weight. */
    public static final String FAINT = "#6a737d";

    /** Thin lines in the background. */
    public static final String RULE = "#d7dce1";

    /** Deadlines and warnings. */
    public static final String ALERT = "#b3261e";

    /** The background. */
    public static final String PAPER = "#ffffff";

    private static final List<String> SERIES =
            List.of("#0072b2", "#d55e00", "#009e73", "#cc79a7", "#56b4e9", "#e69f00", "#000000");
    private static final String LOW_RUNG = "#c6dbef";
    private static final String HIGH_RUNG = "#08306b";

    private Palette() {}

    /** Returns the colour of a series; colours come round again when they run out. */
    public static String colour(int series) {
        return SERIES.get(Math.floorMod(series, SERIES.size()));
    }

    /**
     * Returns the colour of a rung of a rate policy, light for the lowest, dark for the highest.
     *
     * @param rung from 0 to {@code rungs - 1}
     * @param rungs how many there are, 1 or more
     */
    public static String rung(int rung, int rungs) {
        double share = rungs == 1 ? 0.5 : (double) rung / (rungs - 1);
        return blended(LOW_RUNG, HIGH_RUNG, share);
    }

    private static String blended(String from, String to, double share) {
        StringBuilder colour = new StringBuilder("#");
        for (int at = 1; at < 7; at += 2) {
            int low = Integer.parseInt(from, at, at + 2, 16);
            int high = Integer.parseInt(to, at, at + 2, 16);
            colour.append(String.format(Locale.ROOT, "%02x", Math.round(low + share * (high - low))));
        }
        return colour.toString();
    }

    /** Returns whether text on the rung's colour must be white to be read. */
    public static boolean isDark(int rung, int rungs) {
        return rungs > 1 && 2 * rung >= rungs - 1;
    }
}
