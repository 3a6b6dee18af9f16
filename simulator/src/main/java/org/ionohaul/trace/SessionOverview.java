package org.ionohaul.trace;

import java.util.Comparator;
import java.util.List;
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
import org.ionohaul.rendering.TimeAxis;
import org.ionohaul.rendering.TimePlots;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.trace.TraceStep.Kind;

/**
 * A whole session on one screen: what the receiver holds over time, below it when each station was on the air.
 *
 * @param story the session
 */
record SessionOverview(TraceStory story) implements Picture {
    private static final int WIDE = 1040;
    private static final double HEIGHT = 220;
    private static final double LANE = 22;
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
        double y = plot.bottom() + svg.size() / 2;
        for (End end : End.values()) {
            y = lane(plot, scale, end, y);
        }
        new Plot(svg, plot.across(), Scale.linear(0, 1, y, top)).axisBelow(axis.ticks(), axis.name());
        TimePlots.deadlines(plot, axis);
        return svg.finished(y + Plot.roomBelow(svg));
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
        svg.text(
                Svg.FAINT,
                Svg.Anchor.START,
                plot.left(),
                top + 0.9 * svg.lineHeight(),
                svg.smallSize(),
                story.scenario().station(end).name() + " on the air");
        double bar = top + 1.2 * svg.lineHeight();
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
