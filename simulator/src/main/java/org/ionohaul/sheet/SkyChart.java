package org.ionohaul.sheet;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Over;
import org.ionohaul.channel.SkyWatch;
import org.ionohaul.channel.WatchSummary;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Point;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.picture.Tick;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.TimeAxis;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.trial.SkyView;

/**
 * One trial's sky: for each end, the SNR (a line through the middle of each short span, with a band that holds eight tenths
 * of it), what disturbs it, and when other stations are on the air.
 *
 * @param axis the axis of time
 * @param ends a panel an end
 */
record SkyChart(TimeAxis axis, List<Panel> ends) implements Picture {
    private static final double HEIGHT = 180;
    private static final double STEP = 10;
    private static final int TOLD = 5;

    private static final int SPANS = 220;

    /**
     * One end's part of the picture.
     *
     * @param heading who hears whom
     * @param at the middle of each span, in the axis's unit
     * @param low SNR that nine tenths of the span are above, in dB
     * @param median SNR in the middle
     * @param high SNR that one tenth is above
     * @param disturbance noise and other stations in the middle, in dB over the noise floor
     * @param says all of this in words
     * @param others from when to when another station is on the air, in the axis's unit
     */
    record Panel(
            String heading,
            List<Double> at,
            List<Double> low,
            List<Double> median,
            List<Double> high,
            List<Double> disturbance,
            List<String> says,
            List<List<Double>> others) {
        static Panel of(SkyView view, End end, TimeScale scale) {
            SkyWatch watch = view.at(end);
            List<WatchSummary> spans = watch.spans(Math.min(SPANS, watch.samples()));
            return new Panel(
                    SkyTables.heading(view, end),
                    values(spans, it -> scale.inUnit(seconds(it))),
                    values(spans, it -> it.sinrDb().low()),
                    values(spans, it -> it.sinrDb().median()),
                    values(spans, it -> it.sinrDb().high()),
                    values(spans, it -> it.disturbanceDb().median()),
                    spans.stream().map(Panel::says).toList(),
                    watch.overs().stream().map(it -> span(it, scale)).toList());
        }

        private static List<Double> values(List<WatchSummary> spans, ToDoubleFunction<WatchSummary> which) {
            return spans.stream().map(which::applyAsDouble).toList();
        }

        private static List<Double> span(Over over, TimeScale scale) {
            return List.of(
                    scale.inUnit(Math.max(0, SkyView.seconds(over.startNanos()))),
                    scale.inUnit(Math.min(scale.endSeconds(), SkyView.seconds(over.endNanos()))));
        }

        private static String says(WatchSummary span) {
            return String.format(
                    Locale.ROOT,
                    "%s after pressing send\nSNR %.0f dB, eight tenths of the time %.0f to %.0f dB\n"
                            + "Disturbed by %.0f dB over the noise floor\nOthers on the air %s of the time",
                    TimeText.length(seconds(span)),
                    span.sinrDb().median(),
                    span.sinrDb().low(),
                    span.sinrDb().high(),
                    span.disturbanceDb().median(),
                    OddsText.percent(Math.min(1, span.occupiedShare())));
        }

        private static double seconds(WatchSummary span) {
            return (SkyView.seconds(span.fromNanos()) + SkyView.seconds(span.toNanos())) / 2;
        }
    }

    static SkyChart of(SkyView view) {
        TimeScale scale = new TimeScale(view.lengthSeconds());
        return new SkyChart(
                TimeAxis.of(scale, List.of()),
                Stream.of(End.values()).map(it -> Panel.of(view, it, scale)).toList());
    }

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        double y = 0;
        for (Panel end : ends) {
            y = draw(svg, end, y) + svg.size();
        }
        return svg.finished(Legend.draw(svg, y, keys()));
    }

    private static List<Legend.Key> keys() {
        return List.of(
                new Legend.Key(Legend.Sign.LINE, "line", "SNR"),
                new Legend.Key(Legend.Sign.LINE, "line d1", "noise and other stations, over the floor"),
                new Legend.Key(Legend.Sign.BOX, "busy", "another station on the air"));
    }

    private double draw(Svg svg, Panel end, double from) {
        double[] all = Stream.of(end.low(), end.high(), end.disturbance())
                .flatMap(List::stream)
                .mapToDouble(Double::doubleValue)
                .toArray();
        double low = STEP * Math.floor(DoubleStream.of(all).min().orElse(0) / STEP);
        double high =
                Math.max(low + STEP, STEP * Math.ceil(DoubleStream.of(all).max().orElse(0) / STEP));
        List<Tick> decibels = Scale.linear(low, high, 1, 0).marks(STEP, it -> Scale.number(it) + " dB");
        double top = svg.paragraph(Svg.BOLD, 0, from, svg.width() / 1.15, end.heading()) + svg.size();
        Plot plot = new Plot(
                svg,
                axis.scale(Plot.roomLeft(svg, decibels), svg.width() - svg.size()),
                Scale.linear(low, high, top + HEIGHT, top));
        end.others()
                .forEach(it -> svg.rectangle(
                        "busy",
                        plot.across().at(it.get(0)),
                        plot.top(),
                        Math.max(
                                0.6, plot.across().at(it.get(1)) - plot.across().at(it.get(0))),
                        HEIGHT,
                        ""));
        plot.axisLeft(decibels);
        plot.ribbon("band", end.at(), end.low(), end.high());
        plot.axisBelow(axis.ticks(), axis.name());
        plot.line("line d1", points(end, end.disturbance()));
        plot.line("line", points(end, end.median()));
        int[] told =
                IntStream.range(0, end.at().size()).filter(i -> i % TOLD == 0).toArray();
        plot.columns(
                IntStream.of(told).mapToObj(end.at()::get).toList(),
                IntStream.of(told).mapToObj(end.says()::get).toList());
        return plot.bottom() + Plot.roomBelow(svg);
    }

    private static List<Point> points(Panel end, List<Double> levels) {
        return IntStream.range(0, levels.size())
                .mapToObj(i -> new Point(end.at().get(i), levels.get(i)))
                .toList();
    }
}
