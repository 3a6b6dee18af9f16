package org.ionohaul.learning;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.picture.LabelRows;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Path;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Point;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.rendering.TimeAxis;
import org.ionohaul.rendering.TimePlots;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.statistics.OrderedSample;

/**
 * Which share of trials is through by when, before and after the log.
 *
 * @param forecasts one transfer, one way, each mode
 * @param order colours of the modes
 * @param horizonSeconds how long trials were watched
 */
record ForecastCurves(List<Forecast> forecasts, ModeOrder order, double horizonSeconds) implements Picture {
    private static final double HEIGHT = 200;
    private static final int POINTS = 100;

    /** The axis ends where 99 of 100 are through, or with the last deadline. */
    private static final double NEARLY_ALL = 0.99;

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        List<Double> deadlines = forecasts.get(0).transfer().deadlinesSeconds();
        TimeScale scale = scale(deadlines);
        TimeAxis axis = TimeAxis.of(scale, deadlines);
        double left = Plot.roomLeft(svg, TimePlots.percents());
        double right = width - svg.size();
        LabelRows labels = TimePlots.labels(svg, axis, left, right, "");
        double top = Legend.draw(svg, 0, keys()) + svg.size() / 2 + labels.height();
        labels.draw(top);
        Plot plot = new Plot(svg, axis.scale(left, right), Scale.linear(0, 100, top + HEIGHT, top));
        plot.axisLeft(TimePlots.percents());
        plot.axisBelow(axis.ticks(), axis.name());
        TimePlots.deadlines(plot, axis);
        for (Forecast forecast : forecasts) {
            String style = order.style(forecast.mode().title());
            svg.path("steps " + style, curve(plot, forecast.before(), scale));
            svg.path("line " + style, curve(plot, forecast.after(), scale));
        }
        return svg.finished(plot.bottom() + Plot.roomBelow(svg));
    }

    private List<Legend.Key> keys() {
        return forecasts.stream()
                .map(it -> it.mode().title())
                .flatMap(it -> Stream.of(
                        new Legend.Key(Legend.Sign.LINE, "steps " + order.style(it), it + ", before"),
                        new Legend.Key(Legend.Sign.LINE, "line " + order.style(it), it + ", after")))
                .toList();
    }

    private TimeScale scale(List<Double> deadlines) {
        double last = DoubleStream.concat(
                        deadlines.stream().mapToDouble(it -> 1.05 * it),
                        forecasts.stream()
                                .flatMapToDouble(it -> DoubleStream.of(
                                        it.before().quantile(NEARLY_ALL),
                                        it.after().quantile(NEARLY_ALL))))
                .map(it -> Math.min(it, horizonSeconds))
                .max()
                .orElse(horizonSeconds);
        return new TimeScale(last);
    }

    private static Path curve(Plot plot, OrderedSample times, TimeScale scale) {
        Path path = new Path().from(plot.at(new Point(0, 0)));
        IntStream.rangeClosed(1, POINTS)
                .mapToDouble(it -> scale.endSeconds() * it / POINTS)
                .mapToObj(
                        it -> new Point(scale.inUnit(it), 100 * times.atMost(it).share()))
                .forEach(it -> path.to(plot.at(it)));
        return path;
    }
}
