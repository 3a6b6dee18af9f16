package org.ionohaul.rendering;

import org.ionohaul.statistics.Estimate;

/** Estimates as cells of a table: the value, and its interval in small print. */
public final class Cells {
    private static final String NOT_REACHED = "not reached";

    private Cells() {}

    /** Returns a chance, from 0 to 1, in percent. */
    public static Cell chance(Estimate chance) {
        return new Cell(OddsText.percent(chance.value()), OddsText.percentRange(chance.low(), chance.high()));
    }

    /** Returns a time in seconds as tables write it. */
    public static Cell time(Estimate seconds) {
        return new Cell(
                Double.isFinite(seconds.value()) ? TimeText.length(seconds.value()) : NOT_REACHED, timeRange(seconds));
    }

    /** Returns a pace as a grouped number. */
    public static Cell pace(Estimate pace) {
        if (Double.isInfinite(pace.value())) {
            return new Cell("at once", Double.isFinite(pace.low()) ? "over " + SizeText.grouped(pace.low()) : "");
        }
        return new Cell(
                SizeText.grouped(pace.value()),
                Double.isInfinite(pace.high())
                        ? "over " + SizeText.grouped(pace.low())
                        : range(SizeText.grouped(pace.low()), SizeText.grouped(pace.high())));
    }

    private static String timeRange(Estimate seconds) {
        if (Double.isInfinite(seconds.low())) {
            return "";
        }
        return Double.isInfinite(seconds.high())
                ? "over " + TimeText.length(seconds.low())
                : TimeText.range(seconds.low(), seconds.high());
    }

    /** Nothing where both ends are written alike. */
    private static String range(String low, String high) {
        return low.equals(high) ? "" : low + "-" + high;
    }
}
