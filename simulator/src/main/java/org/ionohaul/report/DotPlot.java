package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.rendering.Json;
import org.ionohaul.rendering.ModeSeries;
import org.ionohaul.rendering.Palette;
import org.ionohaul.rendering.TimeAxis;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.study.ModeTrials;

/**
 * Fifty dots a mode, each standing for one trial in fifty, stacked over the minute in which it is through. At the right
 * edge stand rings for trials that get through later than the axis reaches, and crosses for those that never do.
 *
 * <p>After Kay, Kola, Hullman and Munson, "When (ish) is my bus?" (CHI 2016): laypeople read such dots better than curves
 * or shaded bands.
 */
final class DotPlot {
    /** How many dots a mode gets. */
    static final int DOTS = 50;

    private static final int COLUMNS = 54;
    private static final int EDGE_COLUMNS = 12;
    private static final int NAME_LAYERS = 3;
    private static final int LOWEST_ROW = 2;
    private static final int HIGHEST_ROW = 13;
    private static final int LAYER_PIXELS = 7;
    private static final int TOP = 24;
    private static final int BOTTOM = 42;

    private final TimeAxis axis;
    private final List<Row> rows;
    private final int columnsPerBin;

    /**
     * Prepares the chart.
     *
     * @param scale the axis of time
     * @param modes the modes, a row each
     */
    DotPlot(TimeScale scale, List<ModeTrials> modes) {
        axis = new TimeAxis(scale);
        rows = modes.stream().map(it -> Row.of(it, scale)).toList();
        columnsPerBin = IntStream.rangeClosed(1, DOTS)
                .filter(it -> rows.stream().allMatch(row -> row.layers(it) <= HIGHEST_ROW))
                .findFirst()
                .orElse(DOTS);
    }

    /** One mode's trials: those within the axis, and how many come later or never. */
    private record Row(String name, List<Double> shares, List<Double> seconds, int late, int never) {
        static Row of(ModeTrials mode, TimeScale scale) {
            OrderedSample completion = OrderedSample.of(mode.completionSeconds());
            double[] all = IntStream.range(0, DOTS)
                    .mapToDouble(i -> completion.quantile((i + 0.5) / DOTS))
                    .toArray();
            List<Double> within = DoubleStream.of(all)
                    .filter(it -> scale.share(it) < 1)
                    .boxed()
                    .toList();
            int never = (int) DoubleStream.of(all).filter(Double::isInfinite).count();
            return new Row(
                    mode.mode().title(),
                    within.stream().map(scale::share).toList(),
                    within,
                    DOTS - never - within.size(),
                    never);
        }

        /** Returns how many layers of dots it needs when so many columns share a bin. */
        int layers(int columnsPerBin) {
            int highest = 0;
            int[] stacks = new int[COLUMNS / columnsPerBin + 1];
            for (double share : shares) {
                highest = Math.max(highest, ++stacks[(int) (share * COLUMNS) / columnsPerBin]);
            }
            int edge = (late + never + EDGE_COLUMNS - 1) / EDGE_COLUMNS;
            return IntStream.of(LOWEST_ROW, edge, (highest + columnsPerBin - 1) / columnsPerBin)
                    .max()
                    .orElseThrow();
        }

        String remark() {
            return (late > 0 ? late + " later" : "")
                    + (late > 0 && never > 0 ? ", " : "")
                    + (never > 0 ? never + " never" : "");
        }
    }

    /** Returns the height that suits it, in pixels. */
    int heightPixels() {
        return TOP + LAYER_PIXELS * layers(0) + BOTTOM;
    }

    /** Returns how many layers lie below the top of a row. */
    private int layers(int row) {
        return rows.stream()
                .skip(row)
                .mapToInt(it -> it.layers(columnsPerBin) + NAME_LAYERS)
                .sum();
    }

    /** Returns what the charting library reads. */
    Json options(List<Double> deadlinesSeconds) {
        List<Json> series = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            series.add(dots(i));
            series.add(edge(i));
        }
        series.add(names(0, 13, rows.stream().map(Row::name).toList(), lines(deadlinesSeconds)));
        series.add(names(1, 11, rows.stream().map(Row::remark).toList(), TimeAxis.marks(List.of())));
        return Json.of("""
                {"grid": [{"left": 8, "right": 106, "top": ?, "bottom": ?}, {"width": 98, "right": 2, "top": ?, "bottom": ?}],
                 "tooltip": {"trigger": "item"},
                 "xAxis": [?, {"gridIndex": 1, "type": "value", "min": 0, "max": ?, "show": false}],
                 "yAxis": [{"type": "value", "max": ?, "show": false},
                           {"gridIndex": 1, "type": "value", "max": ?, "show": false}],
                 "series": ?}
                """, TOP, BOTTOM, TOP, BOTTOM, axis.options(0), EDGE_COLUMNS, layers(0), layers(0), series);
    }

    private Json dots(int row) {
        List<Json> dots = new ArrayList<>();
        int[] stacks = new int[COLUMNS / columnsPerBin + 1];
        double pitch = axis.at(axis.scale().endSeconds()) / COLUMNS;
        for (int i = 0; i < rows.get(row).seconds().size(); i++) {
            int bin = (int) (rows.get(row).shares().get(i) * COLUMNS) / columnsPerBin;
            int place = stacks[bin]++;
            double x = pitch * (bin * columnsPerBin + place % columnsPerBin + 0.5);
            dots.add(ModeSeries.datum(
                    List.of(x, floor(row) + place / columnsPerBin + 0.5, pitch, 0),
                    rows.get(row).name() + ": through after "
                            + TimeText.clock(rows.get(row).seconds().get(i))));
        }
        return new ModeSeries(row, 0).shape("trial", dots);
    }

    private Json edge(int row) {
        int late = rows.get(row).late();
        List<Json> marks = IntStream.range(0, late + rows.get(row).never())
                .mapToObj(i -> ModeSeries.datum(
                        List.of(i % EDGE_COLUMNS + 0.5, floor(row) + i / EDGE_COLUMNS + 0.5, 1, i < late ? 1 : 2),
                        rows.get(row).name() + (i < late ? ": through later than shown" : ": never through")))
                .toList();
        return new ModeSeries(row, 1).shape("trial", marks);
    }

    private int floor(int row) {
        return layers(row + 1);
    }

    /** Returns the deadlines and the floor of each row. */
    private Json lines(List<Double> deadlinesSeconds) {
        Stream<Json> floors = IntStream.range(0, rows.size())
                .mapToObj(i -> Json.of(
                        "{\"name\": \"\", \"yAxis\": ?, \"lineStyle\": {\"color\": ?, \"type\": \"solid\"}}",
                        floor(i),
                        Palette.RULE));
        return TimeAxis.marks(
                Stream.concat(axis.deadlines(deadlinesSeconds).stream(), floors).toList());
    }

    /** Returns a text over each row, and what else belongs to the whole chart. */
    private Json names(int grid, int fontSize, List<String> names, Json lines) {
        List<Json> data = IntStream.range(0, names.size())
                .mapToObj(i -> Json.of("{\"name\": ?, \"value\": [0, ?]}", names.get(i), layers(i) - NAME_LAYERS / 2.0))
                .toList();
        return Json.of("""
                {"type": "scatter", "xAxisIndex": ?, "yAxisIndex": ?, "silent": true, "symbolSize": 1,
                 "itemStyle": {"color": "transparent"}, "markLine": ?, "data": ?,
                 "label": {"show": true, "position": "right", "distance": 0, "formatter": "{b}",
                           "fontWeight": ?, "fontSize": ?, "color": ?}}
                """, grid, grid, lines, data, grid == 0 ? "bold" : "normal", fontSize, Palette.INK);
    }
}
