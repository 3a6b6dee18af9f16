package org.ionohaul.whatif;

import java.util.List;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Shade;
import org.ionohaul.picture.Svg;

/**
 * What each input does at either end of its range: two lying bars an input, with their intervals.
 *
 * @param axis what the axis says
 * @param end how far it reaches either way of zero
 * @param bars the bars, the longest first
 */
record TornadoChart(String axis, double end, List<Bar> bars) implements Picture {
    private static final double HEIGHT = 16;

    /**
     * A bar, in the axis's unit and within its ends.
     *
     * @param label input, value and change in words
     * @param isLast whether it is for the last of the input's values; else for the first
     * @param low lower end of the whisker
     * @param change length of the bar
     * @param high upper end of the whisker
     */
    record Bar(String label, boolean isLast, double low, double change, double high) {}

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        Scale across = Scale.linear(-end, end, 2, width - 2);
        double y = 0;
        for (Bar bar : bars) {
            y = svg.paragraph("", 0, y, width, bar.label()) + 3;
            double from = Math.min(across.at(0), across.at(bar.change()));
            double to = Math.max(across.at(0), across.at(bar.change()));
            svg.rectangle("part " + Shade.style(bar.isLast() ? 0.55 : 0), from, y, to - from, HEIGHT, bar.label());
            Plot.whisker(svg, "", across, bar.low(), bar.change(), bar.high(), y + HEIGHT / 2);
            // Only beside the bar: above it stand words.
            new Plot(svg, across, Scale.linear(0, 1, y + HEIGHT, y)).upright("axis", 0);
            y += HEIGHT + svg.size() / 2;
        }
        Plot plot = new Plot(svg, across, Scale.linear(0, 1, y, 0));
        plot.axisBelow(across.ticks(7, Scale::number), axis);
        return svg.finished(y + Plot.roomBelow(svg));
    }
}
