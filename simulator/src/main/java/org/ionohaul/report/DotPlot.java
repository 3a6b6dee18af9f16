package org.ionohaul.report;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Fifty dots a mode, each standing for one evening in fifty, stacked over the minute in which it is through. At the right
 * edge stand rings for evenings that get through later than the axis reaches, and crosses for those that never do.
 *
 * <p>After Kay, Kola, Hullman and Munson, "When (ish) is my bus?" (CHI 2016): laypeople read such dots better than curves
 * or shaded bands.
 */
final class DotPlot {
    /** How many dots a mode gets. */
    static final int DOTS = 50;

    private static final double WIDTH = 480;
    private static final double LEFT = 14;
    private static final double EDGE_WIDTH = 78;
    private static final double TOP = 26;
    private static final double BOTTOM = 42;
    private static final double RADIUS = 3.4;
    private static final double PITCH = 2 * RADIUS + 0.5;
    private static final double NAME_HEIGHT = 20;
    private static final double GAP = 8;
    private static final int EDGE_COLUMNS = 10;
    private static final int LOWEST_ROW = 3;
    private static final int HIGHEST_ROW = 13;

    private final Svg svg;
    private final TimePlot plot;
    private final int columnsPerBin;

    private DotPlot(Svg svg, TimePlot plot, int columnsPerBin) {
        this.svg = svg;
        this.plot = plot;
        this.columnsPerBin = columnsPerBin;
    }

    /**
     * One mode's dots.
     *
     * @param name the mode
     * @param seconds for each of {@link #DOTS} equally likely evenings when it is through, rising; empty: never
     */
    record Row(String name, List<OptionalDouble> seconds) {
        int[] stacks(int bins, TimeScale scale) {
            int[] stacks = new int[bins];
            seconds.stream()
                    .filter(OptionalDouble::isPresent)
                    .mapToDouble(OptionalDouble::getAsDouble)
                    .filter(it -> scale.share(it) < 1)
                    .forEach(it -> stacks[(int) (bins * scale.share(it))]++);
            return stacks;
        }

        int late(TimeScale scale) {
            return (int) seconds.stream()
                    .filter(it -> it.isPresent() && scale.share(it.getAsDouble()) >= 1)
                    .count();
        }

        int never() {
            return (int) seconds.stream().filter(OptionalDouble::isEmpty).count();
        }

        int layers(int columns, int columnsPerBin, TimeScale scale) {
            int highest =
                    IntStream.of(stacks(columns / columnsPerBin, scale)).max().orElse(0);
            int edge = layer(late(scale) + never() - 1, EDGE_COLUMNS) + 1;
            return Math.max(LOWEST_ROW, Math.max(edge, layer(highest - 1, columnsPerBin) + 1));
        }
    }

    /** Returns the picture. */
    static String svg(String id, List<Row> rows, List<Double> deadlinesSeconds, TimeScale scale) {
        double axisWidth = WIDTH - LEFT - EDGE_WIDTH;
        int columns = (int) (axisWidth / PITCH);
        int columnsPerBin = columnsPerBin(rows, columns, scale);
        List<Double> heights = rows.stream()
                .map(it -> NAME_HEIGHT + GAP + PITCH * it.layers(columns, columnsPerBin, scale))
                .toList();
        double height = heights.stream().mapToDouble(Double::doubleValue).sum();
        Svg svg = new Svg(
                id,
                WIDTH,
                TOP + height + BOTTOM,
                "Fifty likely evenings a mode",
                "Each dot is one evening in fifty, over the time at which everything is through; rings at the right edge"
                        + " are evenings that are through later, crosses evenings that never are.");
        TimePlot plot = new TimePlot(svg, scale, LEFT, TOP, axisWidth, height);
        svg.text(WIDTH - 2, TOP - 8, Svg.Anchor.END, Palette.FAINT, "later, never");
        plot.drawTimeAxis(scale.unit() + " after pressing send");
        deadlinesSeconds.forEach(plot::drawDeadline);
        DotPlot dots = new DotPlot(svg, plot, columnsPerBin);
        double floor = TOP;
        for (int i = 0; i < rows.size(); i++) {
            svg.boldText(
                    LEFT, floor + 16, Svg.Anchor.START, Palette.INK, rows.get(i).name());
            floor += heights.get(i);
            dots.draw(rows.get(i), columns / columnsPerBin, floor, Palette.colour(i));
        }
        return svg.finished();
    }

    /** Returns how many columns share a bin, so that no stack is too high to be counted. */
    private static int columnsPerBin(List<Row> rows, int columns, TimeScale scale) {
        return IntStream.rangeClosed(1, DOTS)
                .filter(it -> rows.stream().allMatch(row -> row.layers(columns, it, scale) <= HIGHEST_ROW))
                .findFirst()
                .orElse(DOTS);
    }

    private void draw(Row row, int bins, double floor, String colour) {
        svg.line(LEFT, floor, WIDTH - 4, floor, Palette.RULE, 1, "none");
        int[] stacks = row.stacks(bins, plot.scale());
        for (int bin = 0; bin < bins; bin++) {
            for (int i = 0; i < stacks[bin]; i++) {
                double x = LEFT + (bin * columnsPerBin + i % columnsPerBin + 0.5) * PITCH;
                svg.disc(x, y(floor, layer(i, columnsPerBin)), RADIUS, colour);
            }
        }
        int late = row.late(plot.scale());
        for (int i = 0; i < late + row.never(); i++) {
            double x = WIDTH - EDGE_WIDTH + 6 + (i % EDGE_COLUMNS + 0.5) * (PITCH - 0.4);
            double y = y(floor, layer(i, EDGE_COLUMNS));
            if (i < late) {
                svg.ring(x, y, RADIUS - 0.6, colour);
            } else {
                svg.cross(x, y, RADIUS - 0.8, Palette.ALERT);
            }
        }
    }

    private static double y(double floor, int layer) {
        return floor - PITCH * (layer + 0.5) - 1;
    }

    private static int layer(int index, int columns) {
        return Math.floorDiv(index, columns);
    }
}
