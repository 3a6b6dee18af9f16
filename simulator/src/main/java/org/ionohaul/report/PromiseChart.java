package org.ionohaul.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ionohaul.analysis.SizePromises;
import org.ionohaul.picture.LabelRows;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Point;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.picture.Tick;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.TimeAxis;
import org.ionohaul.rendering.TimePlots;
import org.ionohaul.study.SizeGrid;

/**
 * Which sizes may be promised with one mode by which deadline: contours that rise in steps, one for each of some odds; below a
 * contour a file may be promised. The surer, the darker.
 *
 * @param axis the axis of deadlines
 * @param style the mode's
 * @param contours for each of {@link SizePromises#CONTOURS}, from where on each size may be promised, in the axis's unit
 */
record PromiseChart(TimeAxis axis, String style, List<List<Double>> contours) implements Picture {
    private static final double HEIGHT = 250;
    private static final List<Long> MARKS = List.of(1_000L, 3_150L, 10_000L, 31_500L, 100_000L, 315_000L, 1_000_000L);
    private static final int TOLD = 24;

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        List<Tick> marks =
                MARKS.stream().map(it -> new Tick(it, SizeText.size(it))).toList();
        double left = Plot.roomLeft(svg, marks);
        double right = width - svg.size();
        LabelRows labels = TimePlots.labels(svg, axis, left, right, "size of the file");
        double top = Legend.draw(svg, 0, legend()) + labels.height() + svg.size() / 2;
        labels.draw(top);
        Plot plot = new Plot(
                svg,
                axis.scale(left, right),
                Scale.logarithmic(
                        SizeGrid.BYTES.get(0), SizeGrid.BYTES.get(SizeGrid.BYTES.size() - 1), top + HEIGHT, top));
        plot.axisLeft(marks);
        contours.forEach(it -> plot.surface(
                "band " + style,
                steps(it),
                List.of(
                        new Point(0, plot.up().low()),
                        new Point(axis.end(), plot.up().low()))));
        plot.axisBelow(axis.ticks(), "deadline, " + axis.name());
        TimePlots.deadlines(plot, axis);
        for (int i = 0; i < contours.size(); i++) {
            plot.line(lineStyle(i), steps(contours.get(i)));
        }
        List<Double> told = IntStream.rangeClosed(0, TOLD)
                .mapToObj(it -> axis.end() * it / TOLD)
                .toList();
        plot.columns(told, told.stream().map(this::says).toList());
        return svg.finished(plot.bottom() + Plot.roomBelow(svg));
    }

    private List<Legend.Key> legend() {
        return IntStream.range(0, contours.size())
                .mapToObj(i -> new Legend.Key(
                        Legend.Sign.LINE,
                        lineStyle(i),
                        OddsText.odds(SizePromises.CONTOURS.get(i)) + " trials at least"))
                .toList();
    }

    /** Within one mode's picture the pattern tells the odds: the surest is a whole line. */
    private String lineStyle(int contour) {
        String colour = style.split(" ", 2)[0];
        return "line " + colour + " d" + (contours.size() - 1 - contour);
    }

    /** A size that may be promised by a deadline may be by every later one: in between no line would be safe. */
    private List<Point> steps(List<Double> from) {
        List<Point> steps = new ArrayList<>();
        double bytes = SizeGrid.BYTES.get(0);
        for (int size = 0; size < from.size() && from.get(size) <= axis.end(); size++) {
            steps.add(new Point(from.get(size), bytes));
            bytes = SizeGrid.BYTES.get(size);
            steps.add(new Point(from.get(size), bytes));
        }
        if (!steps.isEmpty()) {
            steps.add(new Point(axis.end(), bytes));
        }
        return Collections.unmodifiableList(steps);
    }

    private String says(double deadline) {
        return "Within " + Scale.number(Math.rint(10 * deadline) / 10) + " " + axis.unit() + "\n"
                + IntStream.range(0, contours.size())
                        .mapToObj(i -> OddsText.odds(SizePromises.CONTOURS.get(i)) + ": "
                                + promised(contours.get(i), Math.rint(10 * deadline) / 10))
                        .collect(Collectors.joining("\n"));
    }

    private static String promised(List<Double> from, double deadline) {
        long kept = from.stream().takeWhile(it -> it <= deadline).count();
        return kept == 0 ? "nothing" : SizeText.size(SizeGrid.BYTES.get((int) kept - 1));
    }
}
