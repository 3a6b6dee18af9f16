package org.ionohaul.whatif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.ModePoint;
import org.ionohaul.analysis.PairedEffect;
import org.ionohaul.analysis.Tornado;
import org.ionohaul.analysis.TornadoBar;
import org.ionohaul.analysis.VariationPoint;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.Json;
import org.ionohaul.rendering.Palette;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.statistics.Estimate;

/** What each key does at either end of its range: two lying bars a key, the longest on top, with their intervals. */
final class TornadoCharts {
    private static final int ROW_PIXELS = 46;
    private static final int FRAME_PIXELS = 66;
    private static final double HEADROOM = 1.1;
    private static final String FIRST_COLOUR = "#e69f00";
    private static final String LAST_COLOUR = "#0072b2";

    private final Tornado tornado;
    private final int caseIndex;
    private final int mode;
    private final Table table;

    TornadoCharts(Tornado tornado, int caseIndex, int mode, Table table) {
        this.tornado = tornado;
        this.caseIndex = caseIndex;
        this.mode = mode;
        this.table = table;
    }

    /**
     * What the bars are about.
     *
     * @param change the change at an end
     * @param words the same in words, with its interval
     * @param axis what the axis says
     * @param unit the axis's unit
     * @param reading which way is which
     */
    private record Measure(
            Function<PairedEffect, Estimate> change,
            Function<PairedEffect, Cell> words,
            String axis,
            double unit,
            String reading) {}

    private record End(VariationPoint point, String colour) {}

    List<Chart> charts(String id) {
        String title = tornado.scenario().modes().get(mode).title();
        List<Chart> charts = new ArrayList<>();
        boolean isInMinutes = longest(PairedEffect::medianChangeSeconds) > 120;
        charts.add(chart(
                id + "-tornado",
                title + ": time on the median trial",
                new Measure(
                        PairedEffect::medianChangeSeconds,
                        it -> new Cell(PointWords.change(it), PointWords.changeRange(it)),
                        "change, " + (isInMinutes ? "minutes" : "seconds"),
                        isInMinutes ? 60 : 1,
                        "To the left is sooner, to the right later.")));
        List<Double> deadlines =
                reference().deadlines().stream().map(it -> it.deadlineSeconds()).toList();
        for (int i = 0; i < deadlines.size(); i++) {
            int deadline = i;
            charts.add(chart(
                    id + "-tornado-" + (i + 1),
                    title + ": through within " + TimeText.given(deadlines.get(i)),
                    new Measure(
                            it -> it.deadlineChanges().get(deadline),
                            it -> PointWords.points(it.deadlineChanges().get(deadline)),
                            "change, of 100 trials",
                            0.01,
                            "To the right is more often, to the left less.")));
        }
        return charts;
    }

    private ModePoint reference() {
        return tornado.reference().cases().get(caseIndex).modes().get(mode);
    }

    private PairedEffect effect(VariationPoint end) {
        return end.cases().get(caseIndex).modes().get(mode).effect();
    }

    /** Longest finite change or end of an interval, whichever way. */
    private double longest(Function<PairedEffect, Estimate> change) {
        return tornado.bars().stream()
                .flatMap(it -> Stream.of(it.low(), it.high()))
                .map(it -> change.apply(effect(it)))
                .flatMapToDouble(it -> DoubleStream.of(it.low(), it.value(), it.high()))
                .map(Math::abs)
                .filter(Double::isFinite)
                .max()
                .orElse(0);
    }

    private List<TornadoBar> ranked(Function<PairedEffect, Estimate> change) {
        return tornado.bars().stream()
                .sorted(Comparator.comparingDouble((TornadoBar it) -> Math.max(
                                Math.abs(change.apply(effect(it.low())).value()),
                                Math.abs(change.apply(effect(it.high())).value())))
                        .reversed())
                .toList();
    }

    private Chart chart(String id, String title, Measure measure) {
        double longest = longest(measure.change());
        double end = HEADROOM * (longest > 0 ? longest : measure.unit()) / measure.unit();
        List<String> names = new ArrayList<>();
        List<Json> bars = new ArrayList<>();
        List<Json> whiskers = new ArrayList<>();
        for (TornadoBar bar : ranked(measure.change())) {
            for (End at : List.of(new End(bar.low(), FIRST_COLOUR), new End(bar.high(), LAST_COLOUR))) {
                VariationPoint point = at.point();
                Cell words = measure.words().apply(effect(point));
                Estimate change = measure.change().apply(effect(point));
                names.add(bar.key() + " = " + point.values().get(0) + "\n" + words.line());
                bars.add(Json.of(
                        "{\"value\": ?, \"says\": ?, \"itemStyle\": {\"color\": ?, \"opacity\": 0.55}}",
                        within(change.value() / measure.unit(), end),
                        names.get(names.size() - 1),
                        at.colour()));
                whiskers.add(Json.of(
                        "?",
                        List.of(
                                within(change.low() / measure.unit(), end),
                                within(change.value() / measure.unit(), end),
                                within(change.high() / measure.unit(), end),
                                (double) whiskers.size())));
            }
        }
        Json options = Json.of("""
                {"grid": {"left": 8, "right": 16, "top": 6, "bottom": 46, "containLabel": true}, "tooltip": {"trigger": "item"},
                 "xAxis": {"type": "value", "min": ?, "max": ?, "name": ?, "nameGap": 28,
                  "axisLabel": {"showMinLabel": false, "showMaxLabel": false}},
                 "yAxis": {"type": "category", "inverse": true, "data": ?, "axisLine": {"show": false}, "axisTick": {"show": false},
                  "axisLabel": {"interval": 0, "width": 150, "overflow": "break", "fontSize": 11, "lineHeight": 14, "color": ?}},
                 "series": [
                  {"type": "bar", "barWidth": 20, "data": ?},
                  {"type": "custom", "renderItem": "whisker", "silent": true, "color": ?, "z": 4, "data": ?}]}
                """, -end, end, measure.axis(), names, Palette.INK, bars, Palette.INK, whiskers);
        return new Chart(
                id,
                title,
                measure.reading()
                        + " Each key alone at either end of its range, against the scenario as it stands; the key that"
                        + " changes most is on top. Whiskers: how far chance in the simulation leaves it open.",
                "Two bars a key, one an end of its range. The table has the numbers.",
                FRAME_PIXELS + ROW_PIXELS * names.size(),
                options,
                table);
    }

    private static double within(double value, double end) {
        return Math.max(-end, Math.min(end, value));
    }
}
