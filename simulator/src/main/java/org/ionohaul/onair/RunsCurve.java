package org.ionohaul.onair;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Point;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.picture.Tone;
import org.ionohaul.rendering.TimePlots;

/**
 * The chance of a right verdict against the number of runs: a line an order.
 *
 * @param runs numbers of runs of each mode, rising
 * @param orders a line an order
 */
record RunsCurve(List<Integer> runs, List<Line> orders) implements Picture {
    private static final double HEIGHT = 230;

    /**
     * A line; what was not tried is open.
     *
     * @param order the order in words or letters
     * @param percent the chance in %, an entry a number of runs
     * @param low lower end of its interval
     * @param high upper end of its interval
     * @param says the same in words
     */
    record Line(String order, List<Double> percent, List<Double> low, List<Double> high, List<String> says) {}

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        List<Legend.Key> keys = IntStream.range(0, orders.size())
                .mapToObj(i -> new Legend.Key(
                        Legend.Sign.LINE,
                        Tone.style(i, orders.size()),
                        orders.get(i).order()))
                .toList();
        double top = Legend.draw(svg, 0, keys) + svg.size();
        Plot plot = new Plot(
                svg,
                Scale.linear(-0.5, runs.size() - 0.5, Plot.roomLeft(svg, TimePlots.percents()), width - svg.size()),
                Scale.linear(0, 100, top + HEIGHT, top));
        plot.axisLeft(TimePlots.percents());
        for (int i = 0; i < orders.size(); i++) {
            List<Point> points = points(orders.get(i));
            plot.parts(Tone.style(i, orders.size()), points);
            // A number of runs that stands alone is no line.
            Plot.runs(points).stream()
                    .flatMap(List::stream)
                    .map(plot::at)
                    .forEach(it -> svg.circle("best", it.x(), it.y(), 2.5, ""));
        }
        List<String> names = runs.stream().map(it -> Integer.toString(it)).toList();
        plot.namesBelow(names, "runs of each mode");
        plot.columns(
                IntStream.range(0, runs.size()).mapToObj(i -> (double) i).toList(),
                IntStream.range(0, runs.size()).mapToObj(this::says).toList());
        return svg.finished(plot.bottom() + Plot.roomForNames(svg, names, width));
    }

    private static List<Point> points(Line order) {
        return IntStream.range(0, order.percent().size())
                .mapToObj(i -> new Point(i, order.percent().get(i)))
                .toList();
    }

    private String says(int index) {
        return runs.get(index) + " of each mode"
                + orders.stream()
                        .filter(it -> !it.says().get(index).isEmpty())
                        .map(it -> "\n" + it.order() + ": " + it.says().get(index))
                        .collect(Collectors.joining());
    }
}
