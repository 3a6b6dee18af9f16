package org.ionohaul.trace;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.channel.End;
import org.ionohaul.picture.LabelRows;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Path;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Point;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.picture.Tick;
import org.ionohaul.rendering.CauseLegend;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.TimeAxis;
import org.ionohaul.rendering.TimePlots;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.session.Cause;
import org.ionohaul.trace.TraceStep.Kind;

/**
 * A whole session on one screen: what the receiver holds over time, below it the true SINR at both ends, when each station was on
 * the air, and what the time went to.
 *
 * @param story the session
 */
record SessionOverview(TraceStory story) implements Picture {
    private static final int WIDE = 1040;
    private static final double HEIGHT = 220;
    private static final double SINR_HEIGHT = 90;
    private static final double STEP_DB = 10;
    private static final double LANE = 22;
    private static final double SHARES_HEIGHT = 60;
    private static final int STRETCHES = 60;
    private static final double BYTES_PER_KILOBYTE = 1000;
    private static final String HEARD = "best";
    private static final String LOST = "part c-repeated-payload";

    @Override
    public int wide() {
        return WIDE;
    }

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width, width > WIDE / 2 ? 15 : 13);
        TimeScale scale = new TimeScale(story.result().endedNanos() * 1e-9);
        TimeAxis axis = TimeAxis.of(scale, story.transfer().deadlinesSeconds());
        double whole = story.transfer().totalBytes() / BYTES_PER_KILOBYTE;
        List<Tick> ticks = Scale.linear(0, whole, 1, 0).ticks(6, Scale::number);
        double left = Plot.roomLeft(svg, ticks);
        double right = width - svg.size();
        LabelRows labels = TimePlots.labels(svg, axis, left, right, "kB held");
        double top = Legend.draw(
                        svg,
                        0,
                        List.of(
                                new Legend.Key(Legend.Sign.BOX, HEARD, "heard at the other end"),
                                new Legend.Key(Legend.Sign.BOX, LOST, "lost")))
                + svg.size() / 2
                + labels.height();
        labels.draw(top);
        Plot plot = new Plot(svg, axis.scale(left, right), Scale.linear(0, whole, top + HEIGHT, top));
        plot.axisLeft(ticks);
        svg.path("line", curve(plot, scale));
        double y = sinr(plot, scale);
        for (End end : End.values()) {
            y = lane(plot, scale, end, y);
        }
        y = shares(plot, y);
        new Plot(svg, plot.across(), Scale.linear(0, 1, y, top)).axisBelow(axis.ticks(), axis.name());
        TimePlots.deadlines(plot, axis);
        return svg.finished(Legend.draw(svg, y + Plot.roomBelow(svg) + svg.size() / 2, causes()));
    }

    /** What both ends hear, each stretch's mean; returns where it ends. */
    private double sinr(Plot above, TimeScale scale) {
        Svg svg = above.svg();
        List<Point> near = sinrAt(End.NEAR, scale);
        List<Point> far = sinrAt(End.FAR, scale);
        double[] decibels =
                Stream.of(near, far).flatMap(List::stream).mapToDouble(Point::y).toArray();
        double low = STEP_DB * Math.floor(Arrays.stream(decibels).min().orElse(0) / STEP_DB);
        double high = Math.max(
                low + STEP_DB, STEP_DB * Math.ceil(Arrays.stream(decibels).max().orElse(0) / STEP_DB));
        double top = Legend.draw(svg, heading(above, above.bottom() + svg.size() / 2, "SINR in dB"), ends())
                + svg.size() / 2;
        Plot plot = new Plot(svg, above.across(), Scale.linear(low, high, top + SINR_HEIGHT, top));
        plot.axisLeft(Scale.linear(low, high, 1, 0).marks(STEP_DB, Scale::number));
        plot.line(style(End.NEAR), near);
        plot.line(style(End.FAR), far);
        return plot.bottom() + svg.size() / 2;
    }

    private List<Point> sinrAt(End end, TimeScale scale) {
        return IntStream.range(0, STRETCHES)
                .mapToObj(it -> new Point(
                        scale.inUnit((from(it) + from(it + 1)) * 0.5e-9),
                        story.recorder().gauge().meanDb(end, from(it), from(it + 1))))
                .toList();
    }

    /** What share of each stretch of time went to what, one cause upon the other; returns where it ends. */
    private double shares(Plot above, double from) {
        Svg svg = above.svg();
        double top = heading(above, from, "what the time went to");
        double wide = (above.right() - above.left()) / STRETCHES;
        for (int stretch = 0; stretch < STRETCHES; stretch++) {
            double bottom = top + SHARES_HEIGHT;
            for (Cause cause : Cause.values()) {
                double share = share(cause, from(stretch), from(stretch + 1));
                if (share > 0) {
                    bottom -= share * SHARES_HEIGHT;
                    svg.rectangle(
                            "part " + CauseLegend.of(cause).style(),
                            above.left() + stretch * wide,
                            bottom,
                            wide,
                            share * SHARES_HEIGHT,
                            CauseLegend.of(cause).name() + ", " + OddsText.percent(share) + " of "
                                    + TimeText.length(from(stretch) * 1e-9) + " to "
                                    + TimeText.length(from(stretch + 1) * 1e-9));
                }
            }
        }
        return top + SHARES_HEIGHT;
    }

    /** Returns the share of a stretch of time that went to a cause, 0 to 1. */
    double share(Cause cause, long fromNanos, long untilNanos) {
        long nanos = story.recorder().spans().stream()
                .filter(it -> it.cause() == cause)
                .mapToLong(
                        it -> Math.max(0, Math.min(untilNanos, it.untilNanos()) - Math.max(fromNanos, it.fromNanos())))
                .sum();
        return nanos / (double) Math.max(1, untilNanos - fromNanos);
    }

    private long from(int stretch) {
        return story.result().endedNanos() * stretch / STRETCHES;
    }

    private List<Legend.Key> ends() {
        return Stream.of(End.values())
                .map(it -> new Legend.Key(
                        Legend.Sign.LINE,
                        style(it),
                        "as " + story.scenario().station(it).name() + " hears"))
                .toList();
    }

    private static String style(End end) {
        return end == End.NEAR ? "line" : "line d2";
    }

    private List<Legend.Key> causes() {
        return Stream.of(Cause.values())
                .filter(it -> story.recorder().spans().stream().anyMatch(span -> span.cause() == it))
                .map(CauseLegend::of)
                .map(it -> new Legend.Key(Legend.Sign.BOX, "part " + it.style(), it.name()))
                .toList();
    }

    /** Writes what stands below, and returns where that begins. */
    private static double heading(Plot plot, double top, String words) {
        Svg svg = plot.svg();
        svg.text(Svg.FAINT, Svg.Anchor.START, plot.left(), top + 0.9 * svg.lineHeight(), svg.smallSize(), words);
        return top + 1.2 * svg.lineHeight();
    }

    private Path curve(Plot plot, TimeScale scale) {
        Path path = new Path().from(plot.at(new Point(0, 0)));
        for (int i = 0; i < story.result().progress().size(); i++) {
            path.stepTo(plot.at(new Point(
                    scale.inUnit(story.result().progress().atNanos(i) * 1e-9),
                    story.result().progress().heldBytes(i) / BYTES_PER_KILOBYTE)));
        }
        return path.stepTo(new Point(
                plot.across().at(scale.inUnit(story.result().endedNanos() * 1e-9)),
                plot.up().at(held() / BYTES_PER_KILOBYTE)));
    }

    private long held() {
        int rises = story.result().progress().size();
        return rises == 0 ? 0 : story.result().progress().heldBytes(rises - 1);
    }

    private double lane(Plot plot, TimeScale scale, End end, double top) {
        Svg svg = plot.svg();
        double bar = heading(plot, top, story.scenario().station(end).name() + " on the air");
        svg.line("rule", plot.left(), bar + LANE, plot.right(), bar + LANE);
        story.steps().stream()
                .filter(it -> it.kind() == Kind.BURST && it.at() == end)
                .sorted(Comparator.comparing(it -> !it.isHeard()))
                .forEach(it -> {
                    double from = plot.across().at(scale.inUnit(it.atNanos() * 1e-9));
                    double until = plot.across().at(scale.inUnit(it.untilNanos() * 1e-9));
                    svg.rectangle(it.isHeard() ? HEARD : LOST, from, bar, Math.max(0.6, until - from), LANE, it.says());
                });
        return bar + LANE + svg.size() / 2;
    }
}
