package org.ionohaul.traffic;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Point;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.picture.Tick;
import org.ionohaul.statistics.Estimate;

/**
 * What becomes of a net over a key by which it gets busier.
 *
 * @param name what people call it
 * @param values its values, rising
 * @param lines what is drawn over them
 */
record KneeCurve(String name, List<Double> values, List<Line> lines) implements Picture {
    private static final int MARKS = 6;

    /**
     * Numbers over the values of the key, with a band of what they may truly be.
     *
     * @param name what it is called
     * @param style how it looks
     * @param numbers one for each value
     */
    record Line(String name, String style, List<Estimate> numbers) {
        /** Copies the list. */
        Line {
            numbers = List.copyOf(numbers);
        }

        private double least() {
            return numbers.stream()
                    .mapToDouble(it -> finite(it.low(), it))
                    .min()
                    .orElse(0);
        }

        private double most() {
            return numbers.stream()
                    .mapToDouble(it -> finite(it.high(), it))
                    .max()
                    .orElse(1);
        }

        /** Of too few trials no end is known. */
        private static double finite(double end, Estimate of) {
            return Double.isFinite(end) ? end : of.value();
        }
    }

    /** Copies the lists. */
    KneeCurve {
        values = List.copyOf(values);
        lines = List.copyOf(lines);
    }

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width, width > NARROW ? 15 : 12);
        double least = Math.min(0, lines.stream().mapToDouble(Line::least).min().orElse(0));
        double most = Math.max(1, lines.stream().mapToDouble(Line::most).max().orElse(1));
        double margin = 0.03 * (most - least);
        Scale upward = Scale.linear(least < 0 ? least - margin : 0, most + margin, 1, 0);
        List<Tick> marks = upward.ticks(MARKS, Scale::number);
        double left = Plot.roomLeft(svg, marks);
        List<Legend.Key> names = lines.stream()
                .map(it -> new Legend.Key(Legend.Sign.LINE, "line " + it.style(), it.name()))
                .toList();
        double top = Legend.draw(svg, 0, names) + svg.size();
        double bottom = top + (width > NARROW ? 260 : 200);
        Plot plot = new Plot(
                svg,
                Scale.linear(values.get(0), values.get(values.size() - 1), left, width - svg.size()),
                Scale.linear(upward.low(), upward.high(), bottom, top));
        plot.axisLeft(marks);
        plot.axisBelow(values.stream().map(it -> new Tick(it, Scale.number(it))).toList(), name);
        lines.forEach(it -> draw(plot, it));
        return svg.finished(bottom + Plot.roomBelow(svg));
    }

    private void draw(Plot plot, Line line) {
        plot.surface(
                "band " + line.style(),
                points(line, it -> Line.finite(it.low(), it)),
                points(line, it -> Line.finite(it.high(), it)));
        plot.line("line " + line.style(), points(line, Estimate::value));
    }

    private List<Point> points(Line line, ToDoubleFunction<Estimate> which) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            points.add(
                    new Point(values.get(i), which.applyAsDouble(line.numbers().get(i))));
        }
        return points;
    }
}
