package org.ionohaul.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.DoubleStream;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Over;
import org.ionohaul.channel.SkyWatch;
import org.ionohaul.channel.WatchSummary;

/**
 * A picture of one trial's sky: for each end, the SNR (a line through the middle of each short span, with a band that
 * holds eight tenths of it), what disturbs it, and bars while other stations are on the air.
 */
public record SkyChart(SkyView view) implements ResultFolder.Entry {
    private static final double WIDTH = 480;
    private static final double LEFT = 40;
    private static final double RIGHT = 12;
    private static final double PANEL = 170;
    private static final double PANEL_TOP = 40;
    private static final double PANEL_GAP = 84;
    private static final double LEGEND = 2 * (PANEL + PANEL_GAP) + 20;
    private static final double BAR = 6;
    private static final int SPANS = 220;
    private static final double STEP_DB = 10;
    private static final String SIGNAL = Palette.colour(0);
    private static final String DISTURBANCE = Palette.colour(1);
    private static final String OTHERS = Palette.colour(3);

    @Override
    public String fileName() {
        return "sky.svg";
    }

    @Override
    public void writeTo(Path file) throws IOException {
        Files.writeString(file, svg("sky") + "\n");
    }

    /** Returns the picture; the name must be unique on the page. */
    String svg(String id) {
        Svg svg = new Svg(
                id,
                WIDTH,
                LEGEND + 8,
                "The sky of trial " + view.trial(),
                "For each end the SNR over time, what disturbs it, and when other stations are on the air. The table"
                        + " beside it sums it up.");
        double top = PANEL_TOP;
        for (End end : End.values()) {
            drawEnd(svg, end, top);
            top += PANEL + PANEL_GAP;
        }
        drawLegend(svg, LEGEND);
        return svg.finished();
    }

    private void drawEnd(Svg svg, End end, double top) {
        SkyWatch watch = view.at(end);
        List<WatchSummary> spans = watch.spans(Math.min(SPANS, watch.samples()));
        double high = STEP_DB * Math.ceil(values(spans).max().orElse(0) / STEP_DB);
        double low = Math.min(
                high - STEP_DB, STEP_DB * Math.floor(values(spans).min().orElse(0) / STEP_DB));
        Panel panel = new Panel(svg, top, low, high);
        TimePlot plot = new TimePlot(svg, new TimeScale(view.lengthSeconds()), LEFT, top, WIDTH - LEFT - RIGHT, PANEL);
        svg.boldText(LEFT, top - 20, Svg.Anchor.START, Palette.INK, view.heading(end));
        panel.drawLevels();
        plot.drawTimeAxis(plot.scale().unit() + " after pressing send");
        drawOvers(svg, plot, watch.overs());
        svg.fill(band(plot, panel, spans), SIGNAL, 0.2);
        svg.stroke(disturbance(plot, panel, spans), DISTURBANCE, 1.4, Palette.dash(1));
        svg.stroke(middle(plot, panel, spans), SIGNAL, 1.8, "none");
    }

    private static DoubleStream values(List<WatchSummary> spans) {
        return spans.stream()
                .flatMapToDouble(it -> DoubleStream.of(
                        it.sinrDb().low(),
                        it.sinrDb().high(),
                        it.disturbanceDb().median()));
    }

    private void drawOvers(Svg svg, TimePlot plot, List<Over> overs) {
        for (Over over : overs) {
            double from = plot.x(Math.max(0, SkyView.seconds(over.startNanos())));
            double to = plot.x(Math.min(view.lengthSeconds(), SkyView.seconds(over.endNanos())));
            svg.rectangle(from, plot.top() - 12, Math.max(0.6, to - from), BAR, OTHERS, "another station");
        }
    }

    private static SvgPath band(TimePlot plot, Panel panel, List<WatchSummary> spans) {
        SvgPath band = new SvgPath();
        spans.forEach(it -> band.to(x(plot, it), panel.y(it.sinrDb().high())));
        for (int i = spans.size() - 1; i >= 0; i--) {
            band.to(x(plot, spans.get(i)), panel.y(spans.get(i).sinrDb().low()));
        }
        return band.close();
    }

    private static SvgPath middle(TimePlot plot, Panel panel, List<WatchSummary> spans) {
        SvgPath path = new SvgPath();
        spans.forEach(it -> path.to(x(plot, it), panel.y(it.sinrDb().median())));
        return path;
    }

    private static SvgPath disturbance(TimePlot plot, Panel panel, List<WatchSummary> spans) {
        SvgPath path = new SvgPath();
        spans.forEach(it -> path.to(x(plot, it), panel.y(it.disturbanceDb().median())));
        return path;
    }

    private static double x(TimePlot plot, WatchSummary span) {
        return plot.x((SkyView.seconds(span.fromNanos()) + SkyView.seconds(span.toNanos())) / 2);
    }

    private static void drawLegend(Svg svg, double y) {
        svg.line(LEFT, y - 4, LEFT + 24, y - 4, SIGNAL, 2.4, "none");
        svg.text(LEFT + 29, y, Svg.Anchor.START, Palette.INK, "SNR, dB");
        svg.line(LEFT + 100, y - 4, LEFT + 124, y - 4, DISTURBANCE, 2, Palette.dash(1));
        svg.text(LEFT + 129, y, Svg.Anchor.START, Palette.INK, "disturbance, dB over floor");
        svg.rectangle(LEFT + 312, y - 7, 24, BAR, OTHERS, "other stations");
        svg.text(LEFT + 341, y, Svg.Anchor.START, Palette.INK, "others");
    }

    /** The dB axis of one end's panel. */
    private record Panel(Svg svg, double top, double low, double high) {
        double y(double decibels) {
            return top + PANEL * (high - decibels) / (high - low);
        }

        void drawLevels() {
            for (double level = low; level <= high; level += STEP_DB) {
                svg.line(LEFT, y(level), WIDTH - RIGHT, y(level), Palette.RULE, 1, "none");
                svg.text(LEFT - 6, y(level) + 4, Svg.Anchor.END, Palette.FAINT, Svg.number(level));
            }
        }
    }
}
