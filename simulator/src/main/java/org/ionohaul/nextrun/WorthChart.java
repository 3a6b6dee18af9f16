package org.ionohaul.nextrun;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.DoubleStream;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.statistics.Estimate;

/**
 * What candidates are worth, a whisker each.
 *
 * @param bars the candidates, from top to bottom; at least one
 * @param axis what the scale means
 */
record WorthChart(List<Bar> bars, String axis) implements Picture {
    private static final int MOST_MARKS = 6;

    /** Copies the candidates. */
    WorthChart {
        bars = List.copyOf(bars);
    }

    /**
     * A candidate.
     *
     * @param label what is done, and what that is worth, in words
     * @param worth the same in the axis's unit
     */
    record Bar(String label, Estimate worth) {}

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        Scale across = Scale.linear(end(0, Math::min), end(0.01, Math::max), svg.size(), width - svg.size());
        double y = 0;
        for (Bar bar : bars) {
            y = svg.paragraph("", 0, y, width, bar.label()) + svg.size() / 2;
            Plot.whisker(
                    svg,
                    "",
                    across,
                    bar.worth().low(),
                    bar.worth().value(),
                    bar.worth().high(),
                    y);
            // Only beside the whisker: above it stand words.
            new Plot(svg, across, Scale.linear(0, 1, y + svg.size() / 2, y - svg.size() / 2)).upright("axis", 0);
            y += svg.size();
        }
        new Plot(svg, across, Scale.linear(0, 1, y, 0)).axisBelow(across.ticks(MOST_MARKS, Scale::number), axis);
        return svg.finished(y + Plot.roomBelow(svg));
    }

    private double end(double first, DoubleBinaryOperator further) {
        return bars.stream()
                .flatMapToDouble(
                        it -> DoubleStream.of(it.worth().low(), it.worth().high()))
                .reduce(first, further);
    }
}
