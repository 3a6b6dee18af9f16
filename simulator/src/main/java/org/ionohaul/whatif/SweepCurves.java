package org.ionohaul.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.ionohaul.analysis.ModePoint;
import org.ionohaul.analysis.Variation;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.Json;
import org.ionohaul.rendering.Palette;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.scenario.Mode;
import org.ionohaul.statistics.Estimate;

/** How times and chances run over the values of one key: a line a mode, with the band of its uncertainty. */
final class SweepCurves {
    private static final int PLOT_PIXELS = 300;
    private static final int LEGEND_ROW_PIXELS = 24;
    /** How many names stand beside one another on a phone. */
    private static final int NAMES_A_ROW = 2;

    private static final List<String> SYMBOLS = List.of("circle", "rect", "triangle", "diamond");
    private static final double HEADROOM = 1.05;
    private static final double MOST_TIMES_THE_LONGEST = 1.5;
    private static final double NOTHING_ARRIVES_SECONDS = 60;

    private final Variation variation;
    private final VariationTables tables;
    private final int caseIndex;
    private final SweepAxis axis;

    SweepCurves(Variation variation, VariationTables tables, int caseIndex) {
        this.variation = variation;
        this.tables = tables;
        this.caseIndex = caseIndex;
        this.axis = new SweepAxis(variation.sweeps().get(0));
    }

    List<Chart> charts(String id) {
        List<Chart> charts = new ArrayList<>();
        charts.add(times(id + "-median", "5 of 10 trials", ModePoint::medianSeconds));
        charts.add(times(id + "-ninth", "9 of 10 trials", ModePoint::ninthSeconds));
        List<String> heads = tables.deadlineHeads(caseIndex).toList();
        for (int i = 0; i < heads.size(); i++) {
            charts.add(chances(id + "-deadline-" + (i + 1), heads.get(i), i));
        }
        return charts;
    }

    private Chart times(String id, String trials, Function<ModePoint, Estimate> measure) {
        TimeScale scale = scale(measure);
        double unit = scale.isInMinutes() ? 60 : 1;
        List<Double> marks = scale.marksSeconds(7);
        Json upright =
                Json.of("""
                {"type": "value", "min": 0, "max": ?, "interval": ?, "name": ?, "nameGap": 30,
                 "axisLabel": {"showMaxLabel": false}}
                """, scale.endSeconds() / unit, marks.get(1) / unit, scale.unit() + " after pressing send");
        return chart(
                id,
                "Through on " + trials,
                "The lower the line, the sooner " + trials
                        + " are through. Where a line is missing, fewer get through at" + " all.",
                upright,
                it -> scaled(measure.apply(it), 1 / unit),
                scale.endSeconds() / unit,
                it -> Cells.time(measure.apply(it)));
    }

    /** Long enough for every time that is reached, and for its interval unless that reaches far beyond. */
    private TimeScale scale(Function<ModePoint, Estimate> measure) {
        List<Estimate> reached = variation.points().stream()
                .flatMap(it -> it.cases().get(caseIndex).modes().stream())
                .map(measure)
                .filter(it -> Double.isFinite(it.value()))
                .toList();
        double longest = reached.stream().mapToDouble(Estimate::value).max().orElse(NOTHING_ARRIVES_SECONDS);
        double bound = reached.stream()
                .mapToDouble(Estimate::high)
                .filter(it -> it < MOST_TIMES_THE_LONGEST * longest)
                .max()
                .orElse(longest);
        return new TimeScale(HEADROOM * Math.max(longest, bound));
    }

    private Chart chances(String id, String head, int deadline) {
        Json upright = new Json("{\"type\": \"value\", \"min\": 0, \"max\": 100, \"interval\": 20,"
                + " \"axisLabel\": {\"formatter\": \"{value} %\"}}");
        return chart(
                id,
                "Through " + head,
                "The higher the line, the more trials are through by then.",
                upright,
                it -> scaled(it.deadlines().get(deadline).chance(), 100),
                100,
                it -> Cells.chance(it.deadlines().get(deadline).chance()));
    }

    private static Estimate scaled(Estimate estimate, double factor) {
        return new Estimate(factor * estimate.value(), factor * estimate.low(), factor * estimate.high());
    }

    private Chart chart(
            String id,
            String title,
            String reading,
            Json upright,
            Function<ModePoint, Estimate> height,
            double top,
            Function<ModePoint, Cell> says) {
        List<Mode> modes = variation.scenario().modes();
        List<Json> series = new ArrayList<>();
        for (int mode = 0; mode < modes.size(); mode++) {
            series.add(line(mode, modes.get(mode).title(), height, says));
            series.addAll(bands(mode, height, top));
        }
        int legend = LEGEND_ROW_PIXELS * (modes.size() + NAMES_A_ROW - 1) / NAMES_A_ROW;
        Json options =
                Json.of("""
                {"grid": {"left": 52, "right": 22, "top": ?, "bottom": 62}, "tooltip": {"trigger": "axis"},
                 "legend": {"top": 0, "left": 0, "itemWidth": 34, "selectedMode": false, "data": ?},
                 "xAxis": ?, "yAxis": ?, "series": ?}
                """, legend + 16, modes.stream().map(Mode::title).toList(), axis.options(), upright, series);
        return new Chart(
                id,
                title,
                reading + " The band shows how far chance in the simulation leaves it open.",
                title + " over the values of " + axis.sweep().key() + ", a line a mode. The table has the numbers.",
                PLOT_PIXELS + legend,
                options,
                table(title, says));
    }

    private Table table(String title, Function<ModePoint, Cell> says) {
        List<Cell> heads = new ArrayList<>(List.of(Cell.of(axis.sweep().key())));
        variation.scenario().modes().forEach(it -> heads.add(Cell.of(it.title())));
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < variation.points().size(); i++) {
            List<Cell> row =
                    new ArrayList<>(List.of(Cell.of(axis.sweep().values().get(i))));
            variation.points().get(i).cases().get(caseIndex).modes().forEach(it -> row.add(says.apply(it)));
            rows.add(row);
        }
        return new Table(title, heads, rows);
    }

    private Json line(int mode, String title, Function<ModePoint, Estimate> height, Function<ModePoint, Cell> says) {
        List<Json> data = IntStream.range(0, variation.points().size())
                .mapToObj(i -> Json.of(
                        "{\"value\": ?, \"says\": ?}",
                        List.of(axis.at(i), height.apply(point(i, mode)).value()),
                        (mode == 0
                                        ? axis.sweep().key() + " = "
                                                + axis.sweep().values().get(i) + "\n"
                                        : "") + title + ": "
                                + says.apply(point(i, mode)).line()))
                .toList();
        return Json.of(
                """
                {"type": "line", "name": ?, "color": ?, "lineStyle": {"width": 2.2, "type": ?}, "symbol": ?,
                 "symbolSize": 7, "z": 3, "data": ?}
                """, title, Palette.colour(mode), Palette.dashes(mode), SYMBOLS.get(mode % SYMBOLS.size()), data);
    }

    /** Returns a band for each run of values at which something is known; it ends at the top where nothing bounds it. */
    private List<Json> bands(int mode, Function<ModePoint, Estimate> height, double top) {
        List<Json> bands = new ArrayList<>();
        List<List<Double>> run = new ArrayList<>();
        for (int i = 0; i < variation.points().size(); i++) {
            Estimate estimate = height.apply(point(i, mode));
            if (estimate.low() < top) {
                run.add(List.of(axis.at(i), estimate.low(), Math.min(top, estimate.high())));
            } else {
                addBand(bands, run, mode);
                run = new ArrayList<>();
            }
        }
        addBand(bands, run, mode);
        return bands;
    }

    private static void addBand(List<Json> bands, List<List<Double>> run, int mode) {
        if (run.size() > 1) {
            bands.add(Json.of(
                    "{\"type\": \"custom\", \"renderItem\": \"band\", \"color\": ?, \"data\": ?}",
                    Palette.colour(mode),
                    run));
        }
    }

    private ModePoint point(int index, int mode) {
        return variation.points().get(index).cases().get(caseIndex).modes().get(mode);
    }
}
