package org.ionohaul.traffic;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Point;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.picture.Tick;
import org.ionohaul.statistics.Estimate;

/**
 * How many messages wait in the middle and at the end of the time that counts, over a key by which the net gets busier: where the two
 * part, waiting grows beyond bounds.
 *
 * @param key the key
 * @param values its values, rising
 * @param findings what each comes to
 */
record KneeCurve(String key, List<Double> values, List<NetFindings> findings) implements Picture {
    private static final int MARKS = 6;

    /** Copies the lists. */
    KneeCurve {
        values = List.copyOf(values);
        findings = List.copyOf(findings);
    }

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width, width > NARROW ? 15 : 12);
        double most = findings.stream()
                .mapToDouble(it -> Math.max(
                        Math.max(it.waitingAtEnd().value(), it.waitingAtMiddle().value()),
                        finite(it.waitingAtEnd().high())))
                .max()
                .orElse(1);
        Scale upward = Scale.linear(0, Math.max(1, most * 1.05), 1, 0);
        List<Tick> marks = upward.ticks(MARKS, Scale::number);
        double left = Plot.roomLeft(svg, marks);
        double top = Legend.draw(
                        svg,
                        0,
                        List.of(
                                new Legend.Key(Legend.Sign.LINE, "line m0", "messages waiting at the end"),
                                new Legend.Key(Legend.Sign.LINE, "line m1 d1", "half-way")))
                + svg.size();
        double bottom = top + (width > NARROW ? 260 : 200);
        Plot plot = new Plot(
                svg,
                Scale.linear(values.get(0), values.get(values.size() - 1), left, width - svg.size()),
                Scale.linear(0, upward.high(), bottom, top));
        plot.axisLeft(marks);
        plot.axisBelow(values.stream().map(it -> new Tick(it, Scale.number(it))).toList(), key);
        draw(plot, "m0", NetFindings::waitingAtEnd);
        draw(plot, "m1 d1", NetFindings::waitingAtMiddle);
        return svg.finished(bottom + Plot.roomBelow(svg));
    }

    private void draw(Plot plot, String style, Function<NetFindings, Estimate> what) {
        plot.surface("band " + style, points(what, Estimate::low), points(what, it -> finite(it.high())));
        plot.line("line " + style, points(what, Estimate::value));
    }

    private List<Point> points(Function<NetFindings, Estimate> what, Function<Estimate, Double> which) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            points.add(new Point(values.get(i), which.apply(what.apply(findings.get(i)))));
        }
        return points;
    }

    /** Of too few trials no upper end is known. */
    private static double finite(double high) {
        return Double.isFinite(high) ? high : 0;
    }
}
