package org.ionohaul.report;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.CompletionCurve;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.ChartRecord;
import org.ionohaul.rendering.TimeAxis;
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
record CompletionChart(TimeAxis axis, List<Double> at, List<String> clock, List<Line> modes) implements ChartRecord {
    private static final int POINTS = 120;

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
                instantsSeconds.stream().map(TimeText::clock).toList(),
                modes.stream()
                        .map(it -> Line.of(CompletionCurve.of(it, instantsSeconds)))
                        .toList());
    }
}
