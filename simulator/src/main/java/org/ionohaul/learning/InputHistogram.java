package org.ionohaul.learning;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Path;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Point;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.picture.Tick;
import org.ionohaul.scenario.WrittenInput;

/**
 * An input before and after: shares of draws in cells of equal width.
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
        double low = input.value(LEAST);
        double high = Math.max(input.value(1 - LEAST), Math.nextUp(low));
        double[] before = shares(low, high, it -> it);
        double[] after = shares(low, high, input::quantile);
        double most = DoubleStream.concat(DoubleStream.of(before), DoubleStream.of(after))
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
                Scale.linear(low, high, 0.5 * svg.size(), width - svg.size()),
                Scale.linear(0, most, top + HEIGHT, top));
        double cell = (high - low) / CELLS;
        for (int i = 0; i < CELLS; i++) {
            Point corner = plot.at(new Point(low + i * cell, before[i]));
            svg.rectangle(
                    "open",
                    corner.x(),
                    corner.y(),
                    plot.across().at(low + (i + 1) * cell) - corner.x(),
                    plot.bottom() - corner.y(),
                    "");
        }
        svg.path("whisker", outline(plot, low, cell, after));
        plot.axisBelow(ticks(plot), input.written().map(WrittenInput::unit).orElse("% of draws before lie lower"));
        return svg.finished(plot.bottom() + Plot.roomBelow(svg));
    }

    private List<Tick> ticks(Plot plot) {
        return plot.across()
                .ticks(MOST_MARKS, it -> Scale.number(input.written().isPresent() ? it : 100 * it));
    }

    /** Whole shares of what is believed, in each cell. */
    private double[] shares(double low, double high, DoubleUnaryOperator probability) {
        double[] shares = new double[CELLS];
        IntStream.range(0, DRAWS)
                .mapToDouble(it -> input.value(probability.applyAsDouble((it + 0.5) / DRAWS)))
                .filter(it -> it >= low && it <= high)
                .forEach(it -> shares[(int) Math.min(CELLS - 1, CELLS * (it - low) / (high - low))] += 1.0 / DRAWS);
        return shares;
    }

    private static Path outline(Plot plot, double low, double cell, double[] shares) {
        Path path = new Path().from(plot.at(new Point(low, 0)));
        for (int i = 0; i < shares.length; i++) {
            path.to(plot.at(new Point(low + i * cell, shares[i])));
            path.to(plot.at(new Point(low + (i + 1) * cell, shares[i])));
        }
        return path.to(plot.at(new Point(low + shares.length * cell, 0)));
    }
}
