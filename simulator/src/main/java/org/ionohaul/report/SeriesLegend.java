package org.ionohaul.report;

import java.util.List;
import java.util.stream.IntStream;

/** Says which line is which, two names a row. */
final class SeriesLegend {
    private static final double ROW = 20;

    private SeriesLegend() {}

    /**
     * A line and its name.
     *
     * @param series number of the series, which gives colour and dash
     * @param name its name
     */
    record Entry(int series, String name) {}

    /** Returns the legend of series in their order. */
    static List<Entry> of(List<String> names) {
        return IntStream.range(0, names.size())
                .mapToObj(i -> new Entry(i, names.get(i)))
                .toList();
    }

    /** Returns how much room it takes. */
    static double height(List<Entry> entries) {
        return ROW * Math.ceil(entries.size() / 2.0);
    }

    /** Draws it from a left edge and first base line on, up to a right edge. */
    static void draw(Svg svg, List<Entry> entries, double left, double top, double right) {
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            double x = left + (i % 2) * (right - left) / 2;
            double y = top + ROW * Math.floor(i / 2.0);
            svg.line(x, y - 4, x + 34, y - 4, Palette.colour(entry.series()), 2.6, Palette.dash(entry.series()));
            svg.text(x + 40, y, Svg.Anchor.START, Palette.INK, entry.name());
        }
    }
}
