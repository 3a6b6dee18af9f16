package org.ionohaul.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ionohaul.analysis.ModePoint;
import org.ionohaul.analysis.Variation;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.scenario.KeyName;
import org.ionohaul.statistics.Estimate;

/** How times and chances run over the values of one key: a line a mode, with the band of its uncertainty. */
final class SweepCurves {
    private static final int MOST_MARKS = 7;
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
        this.axis = SweepAxis.of(
                KeyName.of(variation.scenario(), variation.sweeps().get(0).key())
                        .words(),
                variation.sweeps().get(0));
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
        return chart(
                id,
                "Through on " + trials,
                "The lower the line, the sooner " + trials
                        + " are through. Where a line is missing, fewer get through at" + " all.",
                new SweepCurve.Height(
                        scale.unit() + " after pressing send",
                        false,
                        scale.inUnit(scale.endSeconds()),
                        scale.inUnit(scale.marksSeconds(MOST_MARKS).get(1))),
                measure,
                scale::inUnit,
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
        Function<ModePoint, Estimate> measure =
                it -> it.deadlines().get(deadline).chance();
        return chart(
                id,
                "Through " + head,
                "The higher the line, the more trials are through by then.",
                new SweepCurve.Height("", true, 100, 20),
                measure,
                it -> 100 * it,
                it -> Cells.chance(measure.apply(it)));
    }

    private Chart chart(
            String id,
            String title,
            String reading,
            SweepCurve.Height height,
            Function<ModePoint, Estimate> measure,
            DoubleUnaryOperator unit,
            Function<ModePoint, Cell> says) {
        List<SweepCurve.Line> lines = IntStream.range(
                        0, variation.scenario().modes().size())
                .mapToObj(it -> line(it, measure, unit, says))
                .toList();
        return new Chart(
                id,
                title,
                reading + " The band shows how far chance in the simulation leaves it open.",
                title + " over the values of " + axis.name() + ", a line a mode. From the first value to the last: "
                        + lines.stream().map(SweepCurves::ends).collect(Collectors.joining("; ")) + ".",
                new SweepCurve(axis, height, lines),
                table(title, says));
    }

    private static String ends(SweepCurve.Line line) {
        return line.mode() + " " + line.says().get(0) + " to "
                + line.says().get(line.says().size() - 1);
    }

    private SweepCurve.Line line(
            int mode, Function<ModePoint, Estimate> measure, DoubleUnaryOperator unit, Function<ModePoint, Cell> says) {
        List<ModePoint> points = variation.points().stream()
                .map(it -> it.cases().get(caseIndex).modes().get(mode))
                .toList();
        return new SweepCurve.Line(
                variation.scenario().modes().get(mode).title(),
                values(points, it -> unit.applyAsDouble(measure.apply(it).value())),
                values(
                        points,
                        it -> unit.applyAsDouble(Math.max(0, measure.apply(it).low()))),
                values(points, it -> unit.applyAsDouble(measure.apply(it).high())),
                points.stream().map(says).map(Cell::line).toList());
    }

    private static List<Double> values(List<ModePoint> points, ToDoubleFunction<ModePoint> value) {
        return points.stream().map(value::applyAsDouble).toList();
    }

    private Table table(String title, Function<ModePoint, Cell> says) {
        List<Cell> heads = new ArrayList<>(List.of(Cell.of(axis.name())));
        variation.scenario().modes().forEach(it -> heads.add(Cell.of(it.title())));
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < variation.points().size(); i++) {
            List<Cell> row = new ArrayList<>(List.of(Cell.of(axis.values().get(i))));
            variation.points().get(i).cases().get(caseIndex).modes().forEach(it -> row.add(says.apply(it)));
            rows.add(row);
        }
        return new Table(title, heads, rows);
    }
}
