package org.ionohaul.report;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Fifty dots a mode, each standing for one evening in fifty, stacked over the minute in which it is through; evenings
 * that do not get through stand at the right edge.
 *
 * <p>After Kay, Kola, Hullman and Munson, "When (ish) is my bus?" (CHI 2016): laypeople read such dots better than curves
 * or shaded bands.
 */
final class DotPlot {
    /** How many dots a mode gets. */
    static final int DOTS = 50;

    private static final double WIDTH = 480;
    private static final double LEFT = 14;
    private static final double NEVER_WIDTH = 74;
    private static final double TOP = 26;
    private static final double BOTTOM = 46;
    private static final double RADIUS = 3.6;
    private static final double NAME_HEIGHT = 20;
    private static final int NEVER_COLUMNS = 8;
    private static final int LOWEST_ROW = 4;

    private DotPlot() {}

    /**
     * One mode's dots.
     *
     * @param name the mode
     * @param seconds for each of {@link #DOTS} equally likely evenings when it is through, rising; empty: never
     */
    record Row(String name, List<OptionalDouble> seconds) {}

    /** Returns the picture; parameters as for {@link CompletionChart#svg}. */
    static String svg(String id, List<Row> rows, List<Double> deadlinesSeconds, TimeScale scale) {
        double axisWidth = WIDTH - LEFT - NEVER_WIDTH;
        int bins = (int) (axisWidth / (2 * RADIUS + 0.6));
        List<int[]> stacks = rows.stream().map(it -> stacks(it, bins, scale)).toList();
        double height = stacks.stream().mapToDouble(DotPlot::rowHeight).sum();
        Svg svg = new Svg(
                id,
                WIDTH,
                TOP + height + BOTTOM,
                "Fifty likely evenings a mode",
                "Each dot is one evening in fifty, over the time at which everything is through; dots at the right"
                        + " edge are evenings that do not get through.");
        TimePlot plot = new TimePlot(svg, scale, LEFT, TOP, axisWidth, height);
        svg.text(WIDTH - 2, TOP - 8, Svg.Anchor.END, Palette.FAINT, "not through");
        plot.drawTimeAxis("through after so many " + scale.unit());
        deadlinesSeconds.forEach(plot::drawDeadline);
        double floor = TOP;
        for (int i = 0; i < rows.size(); i++) {
            floor += rowHeight(stacks.get(i));
            drawRow(svg, rows.get(i), stacks.get(i), floor, i);
        }
        return svg.finished();
    }

    /** Returns how many dots stand in each bin of time, then how many layers of dots there are at the edge. */
    private static int[] stacks(Row row, int bins, TimeScale scale) {
        int[] stacks = new int[bins + 1];
        stacks[bins] = (int) Math.ceil((double) never(row) / NEVER_COLUMNS);
        for (OptionalDouble seconds : row.seconds()) {
            if (seconds.isPresent()) {
                stacks[Math.min(bins - 1, (int) (bins * scale.share(seconds.getAsDouble())))]++;
            }
        }
        return stacks;
    }

    private static double rowHeight(int[] stacks) {
        int highest = Arrays.stream(stacks).max().orElse(0);
        return NAME_HEIGHT + 2 * RADIUS * Math.max(highest, LOWEST_ROW) + 8;
    }

    private static void drawRow(Svg svg, Row row, int[] stacks, double floor, int series) {
        svg.line(LEFT, floor, WIDTH - 4, floor, Palette.RULE, 1, "none");
        svg.boldText(LEFT, floor - rowHeight(stacks) + 15, Svg.Anchor.START, Palette.INK, row.name());
        for (int bin = 0; bin < stacks.length - 1; bin++) {
            double x = LEFT + (bin + 0.5) * (2 * RADIUS + 0.6);
            for (int i = 0; i < stacks[bin]; i++) {
                svg.disc(x, floor - RADIUS - 1 - 2 * RADIUS * i, RADIUS - 0.3, Palette.colour(series));
            }
        }
        drawNever(svg, row, floor);
    }

    private static void drawNever(Svg svg, Row row, double floor) {
        for (int i = 0; i < never(row); i++) {
            int layer = i / NEVER_COLUMNS;
            double x = WIDTH - NEVER_WIDTH + 10 + (i % NEVER_COLUMNS + 0.5) * 2 * RADIUS;
            svg.disc(x, floor - RADIUS - 1 - 2 * RADIUS * layer, RADIUS - 0.3, Palette.ALERT);
        }
    }

    private static int never(Row row) {
        return (int) row.seconds().stream().filter(OptionalDouble::isEmpty).count();
    }
}
