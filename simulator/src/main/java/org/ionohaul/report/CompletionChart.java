package org.ionohaul.report;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.CompletionCurve;
import org.ionohaul.picture.LabelRows;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Point;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.rendering.TimeAxis;
import org.ionohaul.rendering.TimePlots;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.ModeTrials;

/**
 * How many trials are through by which time: one rising line a mode, with the band of its uncertainty.
 *
 * @param axis the axis of time
 * @param at instants, rising, in its unit
 * @param clock the same in words
 * @param modes a line a mode
 */
record CompletionChart(TimeAxis axis, List<Double> at, List<String> clock, List<Line> modes) implements Picture {
    private static final int POINTS = 120;
    private static final int TOLD = 4;
    private static final double HEIGHT = 230;

    /**
     * A line, in % of trials.
     *
     * @param mode what people call the mode
     * @param share the line, an entry an instant
     * @param low lower edge of its band
     * @param high upper edge of its band
     * @param says the same in words
     */
    record Line(String mode, List<Double> share, List<Double> low, List<Double> high, List<String> says) {
        static Line of(CompletionCurve curve) {
            return new Line(
                    curve.mode(),
                    percent(curve, Estimate::value),
                    percent(curve, Estimate::low),
                    percent(curve, Estimate::high),
                    curve.shares().stream().map(Cells::chance).map(Cell::line).toList());
        }

        private static List<Double> percent(CompletionCurve curve, ToDoubleFunction<Estimate> which) {
            return curve.shares().stream()
                    .map(it -> 100 * which.applyAsDouble(it))
                    .toList();
        }
    }

    static CompletionChart of(TimeScale scale, List<Double> deadlinesSeconds, List<ModeTrials> modes) {
        List<Double> instantsSeconds = Stream.concat(
                        IntStream.rangeClosed(0, POINTS).mapToObj(i -> scale.endSeconds() * i / POINTS),
                        deadlinesSeconds.stream().filter(it -> it <= scale.endSeconds()))
                .sorted()
                .distinct()
                .toList();
        return new CompletionChart(
                TimeAxis.of(scale, deadlinesSeconds),
                instantsSeconds.stream().map(scale::inUnit).toList(),
                instantsSeconds.stream().map(TimeText::length).toList(),
                modes.stream()
                        .map(it -> Line.of(CompletionCurve.of(it, instantsSeconds)))
                        .toList());
    }

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        ModeOrder order = new ModeOrder(modes.stream().map(Line::mode).toList());
        double left = Plot.roomLeft(svg, TimePlots.percents());
        double right = width - svg.size();
        LabelRows labels = TimePlots.labels(svg, axis, left, right, "");
        double top = Legend.draw(svg, 0, order.lines()) + labels.height() + svg.size() / 2;
        labels.draw(top);
        Plot plot = new Plot(svg, axis.scale(left, right), Scale.linear(0, 100, top + HEIGHT, top));
        plot.axisLeft(TimePlots.percents());
        modes.forEach(it -> plot.ribbon("band " + order.style(it.mode()), at, it.low(), it.high()));
        plot.axisBelow(axis.ticks(), axis.name());
        TimePlots.deadlines(plot, axis);
        modes.forEach(it -> plot.line("line " + order.style(it.mode()), points(it)));
        int[] told = told();
        plot.columns(
                IntStream.of(told).mapToObj(at::get).toList(),
                IntStream.of(told).mapToObj(this::says).toList());
        return svg.finished(top + HEIGHT + Plot.roomBelow(svg));
    }

    private List<Point> points(Line mode) {
        return IntStream.range(0, at.size())
                .mapToObj(i -> new Point(at.get(i), mode.share().get(i)))
                .toList();
    }

    /** Every fourth instant, and the deadlines. */
    private int[] told() {
        List<Double> deadlines =
                axis.deadlines().stream().map(TimeAxis.Deadline::at).toList();
        return IntStream.range(0, at.size())
                .filter(i -> i % TOLD == 0 || deadlines.contains(at.get(i)))
                .toArray();
    }

    private String says(int index) {
        return "Through within " + clock.get(index) + "\n"
                + modes.stream()
                        .map(it -> it.mode() + ": " + it.says().get(index))
                        .collect(Collectors.joining("\n"));
    }
}
