package org.ionohaul.traffic;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.net.AirSpan;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Lettering;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.picture.Tick;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.trial.NetTrial;

/**
 * One trial of a net as a time line: a row for the gateway and each station, grey while messages of its own wait or are handed over,
 * black while it is on the air, red while it calls a gateway that works another station.
 *
 * @param scenario the net
 * @param trial the trial, with all that was on the air
 */
record NetHour(NetScenario scenario, NetTrial trial) implements Picture {
    private static final int WIDE = 1040;
    private static final int MOST_MARKS = 8;
    private static final double MINUTE = 60;

    /** Over its letters' size: where rows are lower, only every so manieth is named. */
    private static final double NAME_HEIGHT = 1.3;

    @Override
    public int wide() {
        return WIDE;
    }

    @Override
    public String svg(int width) {
        boolean isWide = width > WIDE / 2;
        Svg svg = new Svg(width, isWide ? 15 : 12);
        int rows = scenario.stations() + 1;
        double rowHeight = Math.max(svg.size() * (rows > 40 ? 0.6 : 1.3), 6);
        double left = IntStream.range(0, rows)
                        .mapToDouble(it -> Lettering.width(scenario.nameOf(it), svg.smallSize()))
                        .max()
                        .orElse(0)
                + svg.size();
        double top = Legend.draw(svg, 0, keys()) + svg.size() / 2;
        double bottom = top + rows * rowHeight;
        double endMinutes = scenario.horizonSeconds() / MINUTE;
        Plot plot = new Plot(
                svg, Scale.linear(0, endMinutes, left, width - svg.size()), Scale.linear(0, rows, top, bottom));
        int named = (int) Math.ceil(NAME_HEIGHT * svg.smallSize() / rowHeight);
        for (int row = 0; row < rows; row++) {
            double y = top + (row + 0.5) * rowHeight;
            svg.line("rule", left, y, plot.right(), y);
            if (row % named == 0) {
                svg.text(
                        Svg.FAINT,
                        Svg.Anchor.END,
                        left - svg.size() / 2,
                        y + 0.35 * svg.smallSize(),
                        svg.smallSize(),
                        scenario.nameOf(row));
            }
        }
        waits(plot, rowHeight);
        sent(plot, rowHeight);
        List<Tick> ticks = plot.across().ticks(MOST_MARKS, Scale::number);
        plot.axisBelow(ticks, "minutes from the beginning");
        return svg.finished(bottom + Plot.roomBelow(svg));
    }

    private static List<Legend.Key> keys() {
        return List.of(
                new Legend.Key(Legend.Sign.BOX, "busy", "a message waits or is handed over"),
                new Legend.Key(Legend.Sign.BOX, "sent", "on the air"),
                new Legend.Key(Legend.Sign.BOX, "vain", "calls a gateway that works another"));
    }

    private void waits(Plot plot, double rowHeight) {
        for (NetTrial.Message message : trial.messages()) {
            if (!message.kind().isForStation()) {
                long untilNanos = Math.min(message.deliveredNanos(), message.givenUpNanos());
                bar(
                        plot,
                        "busy",
                        message.station(),
                        rowHeight * 0.8,
                        message.writtenNanos(),
                        untilNanos,
                        message.kind().name()
                                + (message.isDelivered()
                                        ? ", through after " + TimeText.length(message.seconds())
                                        : ", not through"));
            }
        }
    }

    private void sent(Plot plot, double rowHeight) {
        for (AirSpan span : merged()) {
            bar(
                    plot,
                    span.isToBusyGateway() ? "vain" : "sent",
                    span.from(),
                    rowHeight * 0.45,
                    span.fromNanos(),
                    span.untilNanos(),
                    "");
        }
    }

    /** Bursts of one station that follow each other closer than the eye can part count as one. */
    private List<AirSpan> merged() {
        long closeNanos = Math.round(1e9 * scenario.horizonSeconds() / (2.0 * WIDE));
        List<AirSpan> merged = new ArrayList<>();
        for (int station = 0; station <= scenario.stations(); station++) {
            int number = station;
            List<AirSpan> own =
                    trial.spans().stream().filter(it -> it.from() == number).toList();
            for (AirSpan span : own) {
                int last = merged.size() - 1;
                boolean joins = last >= 0
                        && merged.get(last).from() == span.from()
                        && merged.get(last).isToBusyGateway() == span.isToBusyGateway()
                        && span.fromNanos() - merged.get(last).untilNanos() < closeNanos;
                if (joins) {
                    AirSpan before = merged.get(last);
                    merged.set(
                            last,
                            new AirSpan(
                                    before.channel(),
                                    before.from(),
                                    before.to(),
                                    before.fromNanos(),
                                    span.untilNanos(),
                                    before.isToBusyGateway()));
                } else {
                    merged.add(span);
                }
            }
        }
        return merged;
    }

    private void bar(Plot plot, String style, int row, double high, long fromNanos, long untilNanos, String says) {
        double from = plot.across().within(fromNanos / 60e9);
        double until = plot.across().within(Math.min((double) untilNanos, 1e9 * scenario.horizonSeconds()) / 60e9);
        double middle = plot.up().at(row + 0.5);
        plot.svg().rectangle(style, from, middle - high / 2, Math.max(0.5, until - from), high, says);
    }
}
