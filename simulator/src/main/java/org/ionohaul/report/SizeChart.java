package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.Crossing;
import org.ionohaul.analysis.SizeAnswers;
import org.ionohaul.analysis.SizeCurve;
import org.ionohaul.analysis.SizePoint;
import org.ionohaul.rendering.Json;
import org.ionohaul.rendering.ModeSeries;
import org.ionohaul.rendering.Palette;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.TimeAxis;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.statistics.Estimate;

/**
 * Completion time against file size: a line a mode through what 5 of 10 trials keep, its band from 1 of 10 to 9 of 10;
 * below, the sizes at which two modes change places, each with its interval.
 */
final class SizeChart {
    private static final int TOP = 12;
    private static final int PLOT_PIXELS = 280;
    private static final int GAP = 62;
    private static final int CROSSING_PIXELS = 48;
    private static final List<Double> SIZE_MARKS = List.of(1e3, 1e4, 1e5, 1e6);
    private static final List<Double> TIME_MARKS =
            List.of(1.0, 3.0, 10.0, 30.0, 60.0, 180.0, 600.0, 1800.0, 3600.0, 10800.0, 36000.0, 86400.0);

    private final SizeAnswers answers;
    private final List<Crossing> crossings;
    private final double lowSeconds;
    private final double highSeconds;

    /** Prepares the chart of curves with at least one point each. */
    SizeChart(SizeAnswers answers) {
        this.answers = answers;
        this.crossings =
                answers.duels().stream().flatMap(it -> it.crossings().stream()).toList();
        double[] seconds = answers.curves().stream()
                .flatMap(it -> it.points().stream())
                .flatMapToDouble(it -> DoubleStream.of(
                        it.tenthSeconds().value(),
                        it.medianSeconds().value(),
                        it.ninthSeconds().value()))
                .filter(it -> Double.isFinite(it) && it > 0)
                .toArray();
        this.lowSeconds = DoubleStream.of(seconds).min().orElse(1) / 1.2;
        this.highSeconds =
                Math.max(2 * lowSeconds, DoubleStream.of(seconds).max().orElse(60)) * 1.2;
    }

    /** Returns the height that suits it, in pixels. */
    int heightPixels() {
        return TOP + PLOT_PIXELS + GAP + CROSSING_PIXELS * crossings.size();
    }

    /** Returns what the charting library reads. */
    Json options() {
        List<Json> series = new ArrayList<>();
        series.add(marks());
        for (int i = 0; i < answers.curves().size(); i++) {
            series.add(band(i, answers.curves().get(i).points()));
            series.add(median(i, answers.curves().get(i)));
        }
        series.add(intervals());
        series.add(pairs());
        List<SizePoint> points = answers.curves().get(0).points();
        long low = points.get(0).bytes();
        long high = points.get(points.size() - 1).bytes();
        return Json.of(
                """
                {"grid": [{"left": 58, "right": 92, "top": ?, "height": ?}, {"left": 58, "right": 92, "top": ?, "height": ?}],
                 "tooltip": {"trigger": "axis"},
                 "xAxis": [{"type": "log", "min": ?, "max": ?, "name": "size of the file", "nameGap": 26,
                            "axisLabel": {"show": false}, "axisTick": {"show": false}, "splitLine": {"show": false}},
                           {"gridIndex": 1, "type": "log", "min": ?, "max": ?, "show": false, "axisPointer": {"show": false}}],
                 "yAxis": [{"type": "log", "min": ?, "max": ?, "axisLabel": {"show": false}, "axisTick": {"show": false}, "splitLine": {"show": false}},
                           {"gridIndex": 1, "type": "value", "inverse": true, "min": 0, "max": ?, "show": false}],
                 "series": ?}
                """,
                TOP,
                PLOT_PIXELS,
                TOP + PLOT_PIXELS + GAP,
                CROSSING_PIXELS * crossings.size(),
                low,
                high,
                low,
                high,
                lowSeconds,
                highSeconds,
                Math.max(1, crossings.size()),
                series);
    }

    /** Returns the marks of both axes, in the page's own words, and dotted lines where modes change places. */
    private Json marks() {
        Stream<Json> sizes = SIZE_MARKS.stream()
                .map(it -> Json.of("{\"name\": ?, \"xAxis\": ?}", SizeText.size(it.longValue()), it));
        Stream<Json> times = TIME_MARKS.stream()
                .filter(it -> it >= lowSeconds && it <= highSeconds)
                .map(it -> Json.of("{\"name\": ?, \"yAxis\": ?}", TimeText.given(it), it));
        Stream<Json> changes = crossings.stream()
                .map(it -> Json.of(
                        "{\"name\": \"\", \"xAxis\": ?, \"lineStyle\": {\"color\": ?, \"type\": [2, 3]}}",
                        it.bytes().value(),
                        Palette.ALERT));
        return Json.of(
                """
                {"type": "line", "data": [], "silent": true,
                 "markLine": {"silent": true, "symbol": "none", "lineStyle": {"color": ?, "type": "solid", "width": 1},
                              "label": {"position": "start", "formatter": "{b}", "color": ?}, "data": ?}}
                """,
                Palette.RULE,
                Palette.FAINT,
                Stream.of(sizes, times, changes).flatMap(it -> it).toList());
    }

    /** Where 9 of 10 trials are not reached, the band is open to the top. */
    private Json band(int mode, List<SizePoint> points) {
        List<List<Double>> data = points.stream()
                .filter(it -> Double.isFinite(it.tenthSeconds().value()))
                .map(it -> List.of(
                        (double) it.bytes(),
                        Math.max(lowSeconds, it.tenthSeconds().value()),
                        Math.min(highSeconds, it.ninthSeconds().value())))
                .toList();
        return new ModeSeries(mode, 0).shape("band", data);
    }

    private Json median(int mode, SizeCurve curve) {
        String title = curve.mode().title();
        List<Json> data =
                curve.points().stream().map(it -> datum(mode, title, it)).toList();
        return new ModeSeries(mode, 0).line(title, data, TimeAxis.marks(List.of()));
    }

    private static Json datum(int mode, String title, SizePoint point) {
        String heading = mode == 0 ? SizeText.size(point.bytes()) + ": through by, on 5 of 10 trials (9 of 10)\n" : "";
        return ModeSeries.datum(
                List.of((double) point.bytes(), point.medianSeconds().value()),
                heading + title + ": " + SizeTables.times(point).line());
    }

    private Json intervals() {
        List<List<Double>> data = IntStream.range(0, crossings.size())
                .mapToObj(i -> {
                    Estimate bytes = crossings.get(i).bytes();
                    return List.of(bytes.low(), bytes.value(), bytes.high(), i + 0.8);
                })
                .toList();
        return Json.of("""
                {"type": "custom", "renderItem": "whisker", "xAxisIndex": 1, "yAxisIndex": 1, "color": ?, "silent": true,
                 "data": ?}
                """, Palette.ALERT, data);
    }

    private Json pairs() {
        double left = answers.curves().get(0).points().get(0).bytes();
        List<Json> data = IntStream.range(0, crossings.size())
                .mapToObj(i -> Json.of(
                        "{\"name\": ?, \"value\": ?}",
                        SizeTables.pair(answers, crossings.get(i)),
                        List.of(left, i + 0.3)))
                .toList();
        return Json.of("""
                {"type": "scatter", "xAxisIndex": 1, "yAxisIndex": 1, "silent": true, "symbolSize": 1,
                 "itemStyle": {"color": "transparent"}, "data": ?,
                 "label": {"show": true, "position": "right", "offset": [-60, 0], "formatter": "{b}", "fontSize": 12,
                           "color": ?}}
                """, data, Palette.INK);
    }
}
