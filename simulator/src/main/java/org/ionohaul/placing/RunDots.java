package org.ionohaul.placing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.fieldlog.NotedTime;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Lettering;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.rendering.DoublingAxis;
import org.ionohaul.rendering.ModeOrder;

/**
 * Each logged run on its own simulated distribution: twenty dots a run, of which each stands for one in twenty simulated (M.
 * Fernandes et al., CHI 2018), and where the logged one lies. What was not through when it was broken off lies somewhere behind; what
 * was only seen to have delivered, somewhere before.
 *
 * @param placement the runs
 * @param order colours of the modes
 */
record RunDots(LogPlacement placement, ModeOrder order) implements Picture {
    private static final int DOTS = 20;
    private static final double RADIUS = 3.5;
    private static final double STRIP = 44;
    private static final double NEVER = 58;

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        DoublingAxis axis = axis();
        Scale scale = axis.scale(0.5 * svg.size(), width - NEVER);
        double top = Legend.draw(svg, 0, keys()) + svg.size() / 2;
        double y = top;
        for (PlacedRun run : placement.runs()) {
            y = draw(svg, run, scale, y);
        }
        Plot plot = new Plot(svg, scale, Scale.linear(0, 1, y, top));
        plot.axisBelow(axis.ticks(), "after pressing send; every doubling is equally long");
        svg.text(Svg.FAINT, Svg.Anchor.END, width, y + 5 + 0.85 * svg.lineHeight(), svg.smallSize(), "never");
        return svg.finished(y + Plot.roomBelow(svg));
    }

    private List<Legend.Key> keys() {
        List<Legend.Key> keys = new ArrayList<>();
        for (String mode : order.names()) {
            keys.add(new Legend.Key(Legend.Sign.BOX, "dot " + order.style(mode), mode + ", 1 of 20 simulated a dot"));
        }
        keys.add(new Legend.Key(Legend.Sign.LINE, "whisker", "as logged"));
        return keys;
    }

    private DoublingAxis axis() {
        return DoublingAxis.over(
                placement.runs().stream().flatMapToDouble(it -> DoubleStream.concat(dots(it), noted(it.run()))));
    }

    private static DoubleStream dots(PlacedRun run) {
        return IntStream.range(0, DOTS).mapToDouble(it -> run.times().quantile((it + 0.5) / DOTS));
    }

    private static DoubleStream noted(LoggedRun run) {
        return Stream.of(run.sessionTime(), run.deliveredAfter())
                .flatMap(Optional::stream)
                .mapToDouble(NotedTime::seconds);
    }

    private double draw(Svg svg, PlacedRun placed, Scale scale, double y) {
        LoggedRun run = placed.run();
        String rank = "slower than " + PlacementText.rank(placed.rank());
        List<String> lines = Lettering.lines(
                PlacementText.heading(placed) + ": " + PlacementText.loggedWords(run) + "; " + rank,
                svg.smallSize(),
                svg.width());
        double line = y;
        for (String words : lines) {
            line += svg.lineHeight();
            svg.text("", Svg.Anchor.START, 0, line, svg.smallSize(), words);
        }
        double bottom = line + 6 + STRIP;
        drawDots(svg, placed, scale, bottom);
        drawLogged(svg, placed, scale, bottom);
        svg.line("rule", 0, bottom, svg.width(), bottom);
        return bottom + 6;
    }

    private void drawDots(Svg svg, PlacedRun placed, Scale scale, double bottom) {
        double[] places = dots(placed)
                .map(it -> Double.isFinite(it) ? scale.at(Math.max(1, it)) : svg.width() - 3 * RADIUS)
                .map(it -> 2 * RADIUS * Math.rint(it / (2 * RADIUS)))
                .toArray();
        int highest = IntStream.range(0, DOTS)
                .map(it -> stack(places, it, DOTS))
                .max()
                .orElse(1);
        double step = Math.min(2 * RADIUS, (STRIP - 2 * RADIUS) / Math.max(1, highest - 1));
        for (int i = 0; i < DOTS; i++) {
            double up = bottom - RADIUS - (stack(places, i, i + 1) - 1) * step;
            svg.circle("dot " + order.style(title(placed.run().mode())), places[i], up, RADIUS - 0.4, "");
        }
    }

    /** Returns how many of the first dots stand where one does. */
    private static int stack(double[] places, int dot, int first) {
        return (int) IntStream.range(0, first)
                .filter(it -> places[it] == places[dot])
                .count();
    }

    private String title(String mode) {
        return PlacementText.title(placement.scenario(), mode);
    }

    private void drawLogged(Svg svg, PlacedRun placed, Scale scale, double bottom) {
        LoggedRun run = placed.run();
        double top = bottom - STRIP;
        if (!run.outcome().isDelivered()) {
            run.sessionTime()
                    .ifPresentOrElse(
                            it -> drawArrow(svg, scale.within(it.seconds()), svg.width() - 2, top, bottom),
                            () -> svg.line("whisker", svg.width() - 2, top, svg.width() - 2, bottom));
            return;
        }
        if (run.deliveredAfter().isEmpty() && !placed.isSessionTimed()) {
            double end = run.sessionTime().map(it -> scale.within(it.seconds())).orElse(svg.width() - NEVER);
            drawArrow(svg, end, 2, top, bottom);
            return;
        }
        NotedTime noted = run.deliveredAfter().or(run::sessionTime).orElseThrow();
        double low = scale.within(Math.max(1, noted.lowSeconds()));
        double high = scale.within(noted.highSeconds());
        svg.rectangle("band", low, top, high - low, bottom - top, "");
        double at = scale.within(noted.seconds());
        svg.line("whisker", at, top, at, bottom);
    }

    private static void drawArrow(Svg svg, double from, double to, double top, double bottom) {
        double y = top + 5;
        double back = to > from ? -5 : 5;
        svg.line("whisker", from, top, from, bottom);
        svg.line("whisker", from, y, to, y);
        svg.line("whisker", to, y, to + back, y - 4);
        svg.line("whisker", to, y, to + back, y + 4);
    }
}
