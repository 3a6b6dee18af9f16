package org.ionohaul.report;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.picture.LabelRows;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Lettering;
import org.ionohaul.picture.Path;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Point;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.picture.Tick;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.rendering.TimePlots;
import org.ionohaul.report.RaceChart.Line;

/** How a {@link RaceChart} is drawn: the race above, the one trial's signal below, on the same axis of time. */
final class RaceDrawing {
    private static final double CROSS = 4;
    private static final double POINT = 7;
    /** Points to be pointed at on a line. */
    private static final int POINTS = 12;

    private final RaceChart race;
    private final ModeOrder order;
    private final Svg svg;
    private final boolean isWide;

    RaceDrawing(RaceChart race, int width) {
        this.race = race;
        this.order = race.order();
        this.isWide = width > RaceChart.WIDE / 2;
        this.svg = new Svg(width, isWide ? 17 : 13);
    }

    String svg() {
        double step = Scale.roundStep(Math.max(1, (highest() - lowest()) / 3));
        Scale levels = levels(step);
        List<Tick> bytes = Scale.linear(0, race.end(), 1, 0).ticks(isWide ? 8 : 6, Scale::number);
        List<Tick> decibels = levels.marks(step, it -> Scale.number(it) + " dB");
        double left = Math.max(Plot.roomLeft(svg, bytes), Plot.roomLeft(svg, decibels));
        double right = svg.width() - svg.size();
        LabelRows labels = TimePlots.labels(svg, race.axis(), left, right, race.unit() + " held, of " + race.whole());
        double top = Legend.draw(svg, 0, keys()) + svg.size() / 2 + labels.height();
        double bottom = top + (isWide ? 380 : 240);
        labels.draw(top);
        drawRace(new Plot(svg, race.axis().scale(left, right), Scale.linear(0, race.end(), bottom, top)), bytes);

        double heading = bottom + Plot.roomBelow(svg) + svg.size();
        List<String> words = Lettering.lines(heading(), svg.size(), svg.width());
        for (int i = 0; i < words.size(); i++) {
            svg.text("", 0, heading + i * svg.lineHeight(), words.get(i));
        }
        double meterTop = heading + (words.size() - 1) * svg.lineHeight() + svg.size();
        double meterBottom = meterTop + (isWide ? 110 : 80);
        drawMeter(
                new Plot(
                        svg,
                        race.axis().scale(left, right),
                        Scale.linear(levels.low(), levels.high(), meterBottom, meterTop)),
                decibels);
        return svg.finished(meterBottom + Plot.roomBelow(svg));
    }

    private String heading() {
        return race.heading() + (race.sky().others().isEmpty() ? "" : "; grey, another station is on the air");
    }

    private List<Legend.Key> keys() {
        Stream<Legend.Key> modes = race.modes().stream()
                .map(it -> new Legend.Key(Legend.Sign.LINE, "line " + order.style(it.mode()), it.mode()));
        Stream<Legend.Key> stops =
                race.modes().stream().allMatch(it -> it.stops().isEmpty())
                        ? Stream.of()
                        : Stream.of(new Legend.Key(Legend.Sign.CROSS, "cross", "gave up"));
        return Stream.concat(modes, stops).toList();
    }

    private void drawRace(Plot plot, List<Tick> bytes) {
        plot.axisLeft(bytes);
        race.modes().forEach(it -> drawBand(plot, it));
        plot.axisBelow(race.axis().ticks(), race.axis().name());
        TimePlots.deadlines(plot, race.axis());
        race.modes().forEach(it -> plot.line("line " + order.style(it.mode()), median(it)));
        race.modes().forEach(it -> drawOne(plot, it));
        race.modes().forEach(it -> drawStops(plot, it));
        race.modes().forEach(it -> drawPoints(plot, it));
    }

    /** From when 1 of 10 trials hold so much until 9 of 10 do or, where they never do, to the end of the axis. */
    private void drawBand(Plot plot, Line mode) {
        int[] seen = IntStream.range(0, mode.held().size())
                .filter(i -> mode.tenth().get(i) <= race.axis().end())
                .toArray();
        plot.surface("band " + order.style(mode.mode()), at(seen, mode, mode.tenth()), at(seen, mode, mode.ninth()));
    }

    private static List<Point> at(int[] indices, Line mode, List<Double> times) {
        return IntStream.of(indices)
                .mapToObj(i -> new Point(times.get(i), mode.held().get(i)))
                .toList();
    }

    /** Where half of the trials never hold more, the line goes on level to the end of the axis. */
    private static List<Point> median(Line mode) {
        return at(IntStream.range(0, mode.held().size()).toArray(), mode, mode.median());
    }

    private void drawOne(Plot plot, Line mode) {
        Path path = new Path();
        List<Point> steps = mode.one().stream()
                .map(it -> plot.at(new Point(it.get(0), it.get(1))))
                .toList();
        path.from(steps.get(0));
        steps.subList(1, steps.size()).forEach(path::stepTo);
        svg.path("steps " + order.style(mode.mode()), path);
    }

    private void drawStops(Plot plot, Line mode) {
        if (mode.stops().isEmpty()) {
            return;
        }
        Path path = new Path();
        mode.stops().stream()
                .map(it -> plot.at(new Point(it.get(0), it.get(1))))
                .forEach(it -> Svg.cross(path, it.x(), it.y(), CROSS));
        int stops = mode.stops().size();
        svg.path(
                "cross " + order.style(mode.mode()),
                path,
                mode.mode() + ": " + stops + (stops == 1 ? " trial" : " trials") + " gave up here");
    }

    private void drawPoints(Plot plot, Line mode) {
        double told = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < mode.held().size(); i++) {
            Point point = new Point(mode.median().get(i), mode.held().get(i));
            if (point.x() <= race.axis().end() && point.y() >= told + race.end() / POINTS) {
                Point at = plot.at(point);
                svg.circle(
                        "point " + order.style(mode.mode()),
                        at.x(),
                        at.y(),
                        POINT,
                        mode.mode() + ": " + mode.says().get(i));
                told = point.y();
            }
        }
    }

    private Scale levels(double step) {
        double floor = step * Math.floor(lowest() / step);
        return Scale.linear(floor, Math.max(floor + step, step * Math.ceil(highest() / step)), 1, 0);
    }

    private double lowest() {
        return race.sky().low().stream().reduce(Math::min).orElse(0.0);
    }

    private double highest() {
        return race.sky().high().stream().reduce(Math::max).orElse(0.0);
    }

    private void drawMeter(Plot plot, List<Tick> decibels) {
        race.sky()
                .others()
                .forEach(it -> svg.rectangle(
                        "busy",
                        plot.across().at(it.get(0)),
                        plot.top(),
                        Math.max(
                                0.6, plot.across().at(it.get(1)) - plot.across().at(it.get(0))),
                        plot.bottom() - plot.top(),
                        ""));
        plot.axisLeft(decibels);
        plot.axisBelow(race.axis().ticks(), race.axis().name());
        TimePlots.deadlines(plot, race.axis());
        plot.surface("band", points(race.sky().low()), points(race.sky().high()));
        plot.line("line", points(race.sky().median()));
    }

    private List<Point> points(List<Double> levels) {
        return IntStream.range(0, levels.size())
                .mapToObj(i -> new Point(race.sky().at().get(i), levels.get(i)))
                .toList();
    }
}
