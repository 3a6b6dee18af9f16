package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;

/** Lying bars, one a mode, each cut into coloured parts. */
final class StackedBars {
    private static final double WIDTH = 480;
    private static final double EDGE = 6;
    private static final double BAR = 24;
    private static final double ROW = 54;
    private static final double LEGEND_ROW = 19;
    private static final double TYPICAL_LETTER = 6.6;

    private StackedBars() {}

    /**
     * What a part of a bar means.
     *
     * @param name in words
     * @param colour its colour
     * @param isDark whether text on it must be white
     */
    record Part(String name, String colour, boolean isDark) {}

    /**
     * One bar.
     *
     * @param name the mode
     * @param remark what to say behind the name
     * @param amounts length of each part, as a share of the whole width, in the order of the parts
     * @param labels what each part's amount is in words
     */
    record Bar(String name, String remark, List<Double> amounts, List<String> labels) {}

    /**
     * Returns the picture.
     *
     * @param id a name unique on the page
     * @param title what the picture shows
     * @param parts the parts
     * @param bars the bars
     */
    static String svg(String id, String title, List<Part> parts, List<Bar> bars) {
        List<Integer> shown = shownParts(parts, bars);
        double legendTop = ROW * bars.size() + 14;
        Svg svg = new Svg(
                id,
                WIDTH,
                legendTop + LEGEND_ROW * Math.ceil(shown.size() / 2.0),
                title,
                "One lying bar a mode, cut into parts. The table below has the numbers.");
        for (int i = 0; i < bars.size(); i++) {
            drawBar(svg, parts, bars.get(i), ROW * i);
        }
        for (int i = 0; i < shown.size(); i++) {
            Part part = parts.get(shown.get(i));
            double x = EDGE + (i % 2) * WIDTH / 2;
            double y = legendTop + LEGEND_ROW * Math.floor(i / 2.0);
            svg.rectangle(x, y - 1, 13, 13, part.colour(), part.name());
            svg.text(x + 20, y + 10, Svg.Anchor.START, Palette.INK, part.name());
        }
        return svg.finished();
    }

    private static List<Integer> shownParts(List<Part> parts, List<Bar> bars) {
        List<Integer> shown = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            int part = i;
            if (bars.stream()
                    .anyMatch(it -> part < it.amounts().size() && it.amounts().get(part) > 0)) {
                shown.add(i);
            }
        }
        return shown;
    }

    private static void drawBar(Svg svg, List<Part> parts, Bar bar, double top) {
        svg.boldText(EDGE, top + 15, Svg.Anchor.START, Palette.INK, bar.name());
        svg.text(WIDTH - EDGE, top + 15, Svg.Anchor.END, Palette.FAINT, bar.remark());
        double x = EDGE;
        for (int i = 0; i < bar.amounts().size(); i++) {
            double width = (WIDTH - 2 * EDGE) * bar.amounts().get(i);
            String label = bar.labels().get(i);
            if (width > 0) {
                svg.rectangle(
                        x,
                        top + 22,
                        width,
                        BAR,
                        parts.get(i).colour(),
                        parts.get(i).name() + ": " + label);
            }
            if (width > TYPICAL_LETTER * label.length() + 6) {
                String colour = parts.get(i).isDark() ? Palette.PAPER : Palette.INK;
                svg.text(x + width / 2, top + 22 + BAR / 2 + 4.5, Svg.Anchor.MIDDLE, colour, label);
            }
            x += width;
        }
    }
}
