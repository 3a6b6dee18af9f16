package org.ionohaul.foresight;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.foresight.Guess.Span;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Path;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Point;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.picture.Tick;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.TimeAxis;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.session.ProgressCurve;

/**
 * A race as it went: what the receiver held over time with each mode; below, what was foretold of each and when it was through.
 * A curtain of the page's paper lies over what came of it, which a page may draw back as time goes on; unless it does, it is not
 * seen.
 *
 * @param race the race
 * @param spans what was foretold, an entry a mode
 */
public record RacePicture(Race race, List<Span> spans) implements Picture {
    private static final double HEIGHT = 240;
    private static final double MARGIN = 1.05;
    /** In how many parts of the time it says what is held. */
    private static final int TOLD = 30;

    /** Copies the list. */
    public RacePicture {
        spans = List.copyOf(spans);
    }

    private String name(int mode) {
        return race.situation().modes().get(mode).title();
    }

    /** As far as the race and the ranges go. */
    private TimeScale scale() {
        double longest = Stream.concat(
                        Stream.of(race.endSeconds()),
                        spans.stream().flatMap(it -> Stream.of(it.lowSeconds(), it.highSeconds())))
                .mapToDouble(Double::doubleValue)
                .filter(Double::isFinite)
                .max()
                .orElseThrow();
        return new TimeScale(
                MARGIN * Math.min(longest, race.situation().scenario().horizonSeconds()));
    }

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        int modes = race.runs().size();
        ModeOrder order =
                new ModeOrder(IntStream.range(0, modes).mapToObj(this::name).toList());
        TimeScale scale = scale();
        TimeAxis axis = TimeAxis.of(scale, List.of());
        long bytes = race.situation().transfer().totalBytes();
        List<Tick> marks = Stream.of(0.0, 0.25, 0.5, 0.75, 1.0)
                .map(it -> new Tick(it, Scale.number(100 * it) + " %"))
                .toList();
        double top = svg.paragraph(
                        Svg.FAINT, 0, Legend.draw(svg, 0, order.lines()), width, "held, of " + SizeText.size(bytes))
                + svg.size();
        Plot plot = new Plot(
                svg, axis.scale(Plot.roomLeft(svg, marks), width - svg.size()), Scale.linear(0, 1, top + HEIGHT, top));
        double below = plot.bottom() + Plot.roomBelow(svg);
        double row = 2 * svg.size() + svg.lineHeight();
        for (int mode = 0; mode < modes; mode++) {
            String style = order.style(name(mode));
            svg.path("line " + style, steps(plot, scale, mode, bytes));
            if (Double.isFinite(race.seconds(mode))) {
                double through = plot.across().at(scale.inUnit(race.seconds(mode)));
                svg.circle(
                        "dot " + style, through, below + (mode + 1) * row - svg.size(), svg.size() / 3, through(mode));
            }
        }
        double end = below + modes * row;
        svg.rectangle("curtain", plot.left(), top, svg.width() - plot.left(), end - top, "");
        plot.axisLeft(marks);
        plot.axisBelow(axis.ticks(), axis.name());
        tell(plot, scale);
        for (int mode = 0; mode < modes; mode++) {
            double y = below + mode * row + svg.lineHeight();
            svg.text("", 0, y - svg.lineHeight() / 4, name(mode) + ": you said " + RaceText.span(spans.get(mode)));
            said(plot, scale, spans.get(mode), y + svg.size());
        }
        return svg.finished(end);
    }

    /** Over the curtain: a page that has drawn none back must let nobody point at it. */
    private void tell(Plot plot, TimeScale scale) {
        List<Double> seconds = IntStream.rangeClosed(0, TOLD)
                .mapToObj(it -> scale.endSeconds() * it / TOLD)
                .toList();
        plot.columns(
                seconds.stream().map(scale::inUnit).toList(),
                seconds.stream().map(this::heldAt).toList());
    }

    private String heldAt(double seconds) {
        return "After " + TimeText.length(seconds) + "\n"
                + IntStream.range(0, race.runs().size())
                        .mapToObj(it -> name(it) + ": " + SizeText.size(heldBytes(it, seconds)))
                        .collect(Collectors.joining("\n"));
    }

    private long heldBytes(int mode, double seconds) {
        ProgressCurve progress = race.runs().get(mode).progress();
        long held = 0;
        for (int rise = 0; rise < progress.size() && progress.atNanos(rise) <= seconds * 1e9; rise++) {
            held = progress.heldBytes(rise);
        }
        return held;
    }

    private String through(int mode) {
        return name(mode) + ": through after " + TimeText.length(race.seconds(mode));
    }

    /** What is held rises whenever an over is through. */
    private Path steps(Plot plot, TimeScale scale, int mode, long bytes) {
        ProgressCurve progress = race.runs().get(mode).progress();
        Path path = new Path().from(plot.at(new Point(0, 0)));
        for (int rise = 0; rise < progress.size(); rise++) {
            path.stepTo(plot.at(
                    new Point(scale.inUnit(progress.atNanos(rise) / 1e9), (double) progress.heldBytes(rise) / bytes)));
        }
        double ended = race.runs().get(mode).endedNanos() / 1e9;
        double end = Math.min(scale.endSeconds(), Double.isFinite(race.seconds(mode)) ? race.seconds(mode) : ended);
        long held = progress.size() == 0 ? 0 : progress.heldBytes(progress.size() - 1);
        return path.stepTo(plot.at(new Point(scale.inUnit(end), (double) held / bytes)));
    }

    /** Draws the range that was said; what lies beyond the axis is its end. */
    private static void said(Plot plot, TimeScale scale, Span span, double y) {
        double reach = plot.svg().size() / 3;
        double from = plot.across().at(scale.inUnit(Math.min(span.lowSeconds(), scale.endSeconds())));
        double to = plot.across().at(scale.inUnit(Math.min(span.highSeconds(), scale.endSeconds())));
        plot.svg()
                .path(
                        "whisker",
                        new Path()
                                .from(new Point(from, y - reach))
                                .to(new Point(from, y + reach))
                                .from(new Point(from, y))
                                .to(new Point(to, y))
                                .from(new Point(to, y - reach))
                                .to(new Point(to, y + reach)));
    }
}
