package org.ionohaul.learning;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Path;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Point;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.picture.Tick;

/**
 * An input before and after: shares of draws in cells of equal width, or of each value of a list.
 *
 * @param input what became of it
 */
record InputHistogram(InputChange input) implements Picture {
    private static final int CELLS = 30;
    private static final int DRAWS = 2000;
    private static final double HEIGHT = 130;
    private static final int MOST_MARKS = 6;

    /** What lies further out is not seen. */
    private static final double LEAST = 0.002;

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        Cells cells = input.choices().isEmpty() ? Cells.ofEqualWidth(input) : Cells.ofChoices(input);
        double most = Stream.concat(cells.before().stream(), cells.now().stream())
                .mapToDouble(it -> it)
                .max()
                .orElse(1);
        double top = Legend.draw(
                        svg,
                        0,
                        List.of(
                                new Legend.Key(Legend.Sign.BOX, "open", "before"),
                                new Legend.Key(Legend.Sign.LINE, "whisker", "after the log")))
                + svg.size() / 2;
        Plot plot = new Plot(
                svg,
                Scale.linear(cells.low(), cells.high(), 0.5 * svg.size(), width - svg.size()),
                Scale.linear(0, most, top + HEIGHT, top));
        for (int i = 0; i < cells.count(); i++) {
            Point corner = plot.at(new Point(cells.edge(i), cells.before().get(i)));
            svg.rectangle(
                    "open",
                    corner.x(),
                    corner.y(),
                    plot.across().at(cells.edge(i + 1)) - corner.x(),
                    plot.bottom() - corner.y(),
                    "");
        }
        svg.path("whisker", outline(plot, cells));
        plot.axisBelow(input.choices().isEmpty() ? ticks(plot) : names(cells), unit());
        return svg.finished(plot.bottom() + Plot.roomBelow(svg));
    }

    private List<Tick> ticks(Plot plot) {
        return plot.across().ticks(MOST_MARKS, this::mark);
    }

    private String mark(double value) {
        return input.written()
                .map(it -> it.isClock() ? it.text(value) : Scale.number(value))
                .orElseGet(() -> Scale.number(100 * value));
    }

    /** Values of a list and times of day have theirs beside each mark. */
    private String unit() {
        return input.written()
                .map(it -> it.isClock() || !it.choices().isEmpty() ? "" : it.unit())
                .orElse("% of draws before lie lower");
    }

    private List<Tick> names(Cells cells) {
        return IntStream.range(0, cells.count())
                .mapToObj(it -> new Tick(it + 0.5, input.choices().get(it)))
                .toList();
    }

    private static Path outline(Plot plot, Cells cells) {
        Path path = new Path().from(plot.at(new Point(cells.low(), 0)));
        for (int i = 0; i < cells.count(); i++) {
            path.to(plot.at(new Point(cells.edge(i), cells.now().get(i))));
            path.to(plot.at(new Point(cells.edge(i + 1), cells.now().get(i))));
        }
        return path.to(plot.at(new Point(cells.high(), 0)));
    }

    /**
     * Shares of draws side by side.
     *
     * @param low where the first cell begins
     * @param high where the last one ends
     * @param before share of the draws before, in each cell
     * @param now share of what is believed now
     */
    private record Cells(double low, double high, List<Double> before, List<Double> now) {
        static Cells ofChoices(InputChange input) {
            return new Cells(0, input.choices().size(), input.sharesBefore(), input.sharesNow());
        }

        static Cells ofEqualWidth(InputChange input) {
            double low = input.value(LEAST);
            double high = Math.max(input.value(1 - LEAST), Math.nextUp(low));
            return new Cells(low, high, shares(input, low, high, it -> it), shares(input, low, high, input::quantile));
        }

        int count() {
            return before.size();
        }

        double edge(int cell) {
            return low + cell * (high - low) / count();
        }

        private static List<Double> shares(
                InputChange input, double low, double high, DoubleUnaryOperator probability) {
            double[] shares = new double[CELLS];
            IntStream.range(0, DRAWS)
                    .mapToDouble(it -> input.value(probability.applyAsDouble((it + 0.5) / DRAWS)))
                    .filter(it -> it >= low && it <= high)
                    .forEach(it -> shares[(int) Math.min(CELLS - 1, CELLS * (it - low) / (high - low))] += 1.0 / DRAWS);
            return DoubleStream.of(shares).boxed().toList();
        }
    }
}
