package org.ionohaul.report;

import java.util.List;

/** A picture of how many evenings are through by which time: one rising line a mode, with the band of its uncertainty. */
final class CompletionChart {
    private static final double WIDTH = 480;
    private static final double HEIGHT = 330;
    private static final double LEFT = 48;
    private static final double RIGHT = 14;
    private static final double TOP = 26;
    private static final double BOTTOM = 44;

    private CompletionChart() {}

    /**
     * One mode's line.
     *
     * @param name the mode
     * @param points points of the line, in order of time, from one end of the axis to the other
     */
    record Line(String name, List<Point> points) {}

    /**
     * A point of a line.
     *
     * @param seconds the instant
     * @param share share of evenings through by then, from 0 to 1
     * @param low lower end of its interval
     * @param high upper end of its interval
     */
    record Point(double seconds, double share, double low, double high) {}

    /**
     * Returns the picture.
     *
     * @param id a name unique on the page
     * @param lines the modes
     * @param deadlinesSeconds upright lines
     * @param scale the axis of time
     */
    static String svg(String id, List<Line> lines, List<Double> deadlinesSeconds, TimeScale scale) {
        List<SeriesLegend.Entry> legend =
                SeriesLegend.of(lines.stream().map(Line::name).toList());
        Svg svg = new Svg(
                id,
                WIDTH,
                HEIGHT + SeriesLegend.height(legend),
                "Evenings through by a given time",
                "One rising line a mode; the higher at a given minute, the surer. The table below has the numbers.");
        TimePlot plot = new TimePlot(svg, scale, LEFT, TOP, WIDTH - LEFT - RIGHT, HEIGHT - TOP - BOTTOM);
        drawShares(svg, plot);
        plot.drawTimeAxis(scale.unit() + " after pressing send");
        deadlinesSeconds.forEach(plot::drawDeadline);
        for (int i = 0; i < lines.size(); i++) {
            svg.fill(band(plot, lines.get(i).points()), Palette.colour(i), 0.15);
        }
        for (int i = 0; i < lines.size(); i++) {
            svg.stroke(line(plot, lines.get(i).points()), Palette.colour(i), 2.2, Palette.dash(i));
        }
        SeriesLegend.draw(svg, legend, LEFT, HEIGHT + 10, WIDTH);
        return svg.finished();
    }

    private static void drawShares(Svg svg, TimePlot plot) {
        for (int tenths = 0; tenths <= 10; tenths += 2) {
            double y = plot.y(tenths / 10.0);
            svg.line(plot.left(), y, plot.left() + plot.width(), y, Palette.RULE, 1, "none");
            svg.text(plot.left() - 6, y + 4, Svg.Anchor.END, Palette.FAINT, tenths * 10 + " %");
        }
    }

    private static SvgPath line(TimePlot plot, List<Point> points) {
        SvgPath path = new SvgPath();
        points.forEach(it -> path.to(plot.x(it.seconds()), plot.y(it.share())));
        return path;
    }

    private static SvgPath band(TimePlot plot, List<Point> points) {
        SvgPath path = new SvgPath();
        points.forEach(it -> path.to(plot.x(it.seconds()), plot.y(it.high())));
        for (int i = points.size() - 1; i >= 0; i--) {
            path.to(plot.x(points.get(i).seconds()), plot.y(points.get(i).low()));
        }
        return path.close();
    }
}
