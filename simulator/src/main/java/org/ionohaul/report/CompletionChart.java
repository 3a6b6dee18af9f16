package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.Json;
import org.ionohaul.rendering.ModeSeries;
import org.ionohaul.rendering.TimeAxis;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.study.ModeTrials;

/** How many trials are through by which time: one rising line a mode, with the band of its uncertainty. */
final class CompletionChart {
    private static final int POINTS = 120;

    private final TimeAxis axis;
    private final List<Double> deadlinesSeconds;
    private final List<Double> instantsSeconds;

    /**
     * Prepares the chart.
     *
     * @param scale the axis of time
     * @param deadlinesSeconds upright lines
     */
    CompletionChart(TimeScale scale, List<Double> deadlinesSeconds) {
        this.axis = new TimeAxis(scale);
        this.deadlinesSeconds = deadlinesSeconds;
        this.instantsSeconds = Stream.concat(
                        IntStream.rangeClosed(0, POINTS).mapToObj(i -> scale.endSeconds() * i / POINTS),
                        deadlinesSeconds.stream().filter(it -> it <= scale.endSeconds()))
                .sorted()
                .distinct()
                .toList();
    }

    /** Returns what the charting library reads. */
    Json options(List<ModeTrials> modes) {
        List<Json> series = new ArrayList<>();
        for (int i = 0; i < modes.size(); i++) {
            List<Estimate> shares = shares(modes.get(i));
            series.add(band(i, shares));
            series.add(line(i, modes.get(i).mode().title(), shares));
        }
        return Json.of("""
                {"grid": {"left": 46, "right": 92, "top": 24, "bottom": 42}, "tooltip": {"trigger": "axis"},
                 "xAxis": ?,
                 "yAxis": {"type": "value", "max": 100, "interval": 20, "axisLabel": {"formatter": "{value} %"}},
                 "series": ?}
                """, axis.options(0), series);
    }

    private List<Estimate> shares(ModeTrials mode) {
        OrderedSample completion = OrderedSample.of(mode.completionSeconds());
        return instantsSeconds.stream()
                .map(it -> completion.atMost(it).wilson(Estimate.CONFIDENCE))
                .toList();
    }

    private Json band(int mode, List<Estimate> shares) {
        List<List<Double>> data = IntStream.range(0, shares.size())
                .mapToObj(i -> List.of(
                        x(i), 100 * shares.get(i).low(), 100 * shares.get(i).high()))
                .toList();
        return new ModeSeries(mode, 0).shape("band", data);
    }

    private Json line(int mode, String title, List<Estimate> shares) {
        List<Json> data = IntStream.range(0, shares.size())
                .mapToObj(i -> ModeSeries.datum(
                        List.of(x(i), 100 * shares.get(i).value()),
                        (mode == 0 ? heading(i) : "") + title + ": "
                                + Cells.chance(shares.get(i)).line()))
                .toList();
        Json marks = TimeAxis.marks(mode == 0 ? axis.deadlines(deadlinesSeconds) : List.of());
        return new ModeSeries(mode, 0).line(title, data, marks);
    }

    private String heading(int instant) {
        return "Through within " + TimeText.clock(instantsSeconds.get(instant)) + "\n";
    }

    private double x(int instant) {
        return axis.at(instantsSeconds.get(instant));
    }
}
