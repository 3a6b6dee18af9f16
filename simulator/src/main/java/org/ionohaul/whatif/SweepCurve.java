package org.ionohaul.whatif;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ionohaul.picture.LabelRows;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Point;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.picture.Tick;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.rendering.TimePlots;

/**
 * How a measure runs over the values of one key: a line a mode, with the band of its uncertainty.
 *
 * @param axis the lying axis
 * @param height the upright axis
 * @param modes a line a mode; shorter than the axis when it was interrupted
 */
record SweepCurve(SweepAxis axis, Height height, List<Line> modes) implements Picture {
    private static final double HEIGHT = 230;

    /**
     * The upright axis, from zero.
     *
     * @param name what it says; empty if it says nothing
     * @param isPercent whether it counts in %
     * @param top where it ends
     * @param step the distance of its marks
     */
    record Height(String name, boolean isPercent, double top, double step) {}

    /**
     * A line; what is not reached is open.
     *
     * @param mode what people call the mode
     * @param value the line, an entry a value of the key
     * @param low lower edge of its band, zero or above
     * @param high upper edge of its band
     * @param says the same in words
     */
    record Line(String mode, List<Double> value, List<Double> low, List<Double> high, List<String> says) {}

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        ModeOrder order = new ModeOrder(modes.stream().map(Line::mode).toList());
        List<Tick> up = height.isPercent()
                ? TimePlots.percents()
                : Scale.linear(0, height.top(), 1, 0).marks(height.step(), Scale::number);
        LabelRows name = new LabelRows(svg);
        if (!height.name().isEmpty()) {
            name.add(Svg.FAINT, 0, height.name());
        }
        double top = Legend.draw(svg, 0, order.lines()) + name.height() + svg.size() / 2;
        name.draw(top);
        double left = Plot.roomLeft(svg, up);
        double right = width - svg.size();
        List<Double> at = axis.positions();
        Plot plot = new Plot(svg, axis.scale(left, right), Scale.linear(0, height.top(), top + HEIGHT, top));
        plot.axisLeft(up);
        modes.forEach(it -> plot.ribbon("band " + order.style(it.mode()), at, it.low(), it.high()));
        modes.forEach(it -> plot.parts("line " + order.style(it.mode()), points(it, at)));
        modes.forEach(it -> Plot.runs(points(it, at)).stream()
                .flatMap(List::stream)
                .map(plot::at)
                .forEach(point -> svg.circle("dot " + order.style(it.mode()), point.x(), point.y(), 3.5, "")));
        plot.columns(at, IntStream.range(0, at.size()).mapToObj(this::says).toList());
        return svg.finished(plot.bottom() + axis.drawBelow(plot));
    }

    private static List<Point> points(Line mode, List<Double> at) {
        return IntStream.range(0, mode.value().size())
                .mapToObj(i -> new Point(at.get(i), mode.value().get(i)))
                .toList();
    }

    private String says(int index) {
        return axis.name() + " = " + axis.values().get(index)
                + modes.stream()
                        .filter(it -> index < it.says().size())
                        .map(it -> "\n" + it.mode() + ": " + it.says().get(index))
                        .collect(Collectors.joining());
    }
}
