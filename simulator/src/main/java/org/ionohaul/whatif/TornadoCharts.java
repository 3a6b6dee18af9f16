package org.ionohaul.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.ModePoint;
import org.ionohaul.analysis.PairedEffect;
import org.ionohaul.analysis.Tornado;
import org.ionohaul.analysis.TornadoBar;
import org.ionohaul.analysis.VariationPoint;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.statistics.Estimate;

/** What each input does at either end of its range: two lying bars an input, the longest on top, with their intervals. */
final class TornadoCharts {
    private static final double HEADROOM = 1.1;

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
     * @param ranked the keys in order of what they change
     */
    private record Measure(
            Function<PairedEffect, Estimate> change,
            Function<PairedEffect, Cell> words,
            String axis,
            double unit,
            String reading,
            List<TornadoBar> ranked) {}

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
                        "To the left is sooner, to the right later.",
                        tornado.ranked(caseIndex, mode))));
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
                            "To the right is more often, to the left less.",
                            tornado.ranked(caseIndex, mode, deadline))));
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

    private Chart chart(String id, String title, Measure measure) {
        double longest = longest(measure.change());
        double end = HEADROOM * (longest > 0 ? longest : measure.unit()) / measure.unit();
        List<TornadoChart.Bar> bars = measure.ranked().stream()
                .flatMap(it -> Stream.of(
                        bar(it.key(), it.low(), false, measure, end), bar(it.key(), it.high(), true, measure, end)))
                .toList();
        return new Chart(
                id,
                title,
                measure.reading()
                        + " Each input alone at either end of its range, against the scenario as it stands; the one that"
                        + " changes most is on top. Whiskers: how far chance in the simulation leaves it open.",
                "Two bars an input, one an end of its range; on top "
                        + bars.stream().limit(2).map(TornadoChart.Bar::label).collect(Collectors.joining(" and "))
                        + ".",
                new TornadoChart(measure.axis(), end, bars),
                table);
    }

    private TornadoChart.Bar bar(String key, VariationPoint point, boolean isLast, Measure measure, double end) {
        Estimate change = measure.change().apply(effect(point));
        DoubleUnaryOperator within = it -> Math.max(-end, Math.min(end, it / measure.unit()));
        return new TornadoChart.Bar(
                TornadoWords.end(tornado.scenario(), key, point) + "\n"
                        + measure.words().apply(effect(point)).line(),
                isLast,
                within.applyAsDouble(change.low()),
                within.applyAsDouble(change.value()),
                within.applyAsDouble(change.high()));
    }
}
