package org.ionohaul.report;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.Crossing;
import org.ionohaul.analysis.SizeAnswers;
import org.ionohaul.analysis.SizeCurve;
import org.ionohaul.analysis.SizePoint;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Point;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.picture.Tick;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.statistics.Estimate;

/**
 * Completion time against file size: a line a mode through what 5 of 10 trials keep, its band from 1 of 10 to 9 of 10;
 * below, the sizes at which two modes change places, each with its interval.
 *
 * @param sizeMarks sizes to mark
 * @param timeMarks times to mark, in seconds
 * @param bytes the sizes of the lines' points, rising
 * @param sizes the same in words
 * @param modes a line a mode
 * @param crossings where modes change places
 */
record SizeChart(
        List<Mark> sizeMarks,
        List<Mark> timeMarks,
        List<Long> bytes,
        List<String> sizes,
        List<Line> modes,
        List<Change> crossings)
        implements Picture {
    private static final double HEIGHT = 280;
    private static final double MARGIN = 1.2;
    private static final List<Mark> SIZE_MARKS = Stream.of(1_000L, 10_000L, 100_000L, 1_000_000L)
            .map(it -> new Mark(it, SizeText.size(it)))
            .toList();
    private static final List<Mark> TIME_MARKS = Stream.of(
                    1.0, 3.0, 10.0, 30.0, 60.0, 180.0, 600.0, 1800.0, 3600.0, 10800.0, 36000.0, 86400.0)
            .map(it -> new Mark(it, TimeText.given(it)))
            .toList();

    /**
     * A mark of an axis, in the page's own words.
     *
     * @param at where
     * @param label the words
     */
    record Mark(double at, String label) {}

    /**
     * A line, in seconds; what is not reached is open.
     *
     * @param mode what people call the mode
     * @param tenth the time that 1 of 10 trials keeps, an entry a size
     * @param median the time that 5 of 10 keep
     * @param ninth the time that 9 of 10 keep
     * @param says the last two in words
     */
    record Line(String mode, List<Double> tenth, List<Double> median, List<Double> ninth, List<String> says) {
        static Line of(SizeCurve curve) {
            return new Line(
                    curve.mode().title(),
                    values(curve, SizePoint::tenthSeconds),
                    values(curve, SizePoint::medianSeconds),
                    values(curve, SizePoint::ninthSeconds),
                    curve.points().stream()
                            .map(SizeTables::times)
                            .map(Cell::line)
                            .toList());
        }

        private static List<Double> values(SizeCurve curve, Function<SizePoint, Estimate> which) {
            return curve.points().stream().map(it -> which.apply(it).value()).toList();
        }
    }

    /**
     * A size at which two modes change places.
     *
     * @param says which, and at which size
     * @param bytes the size, with its interval
     */
    record Change(String says, Estimate bytes) {}

    /** Returns the chart of curves with at least one point each. */
    static SizeChart of(SizeAnswers answers) {
        List<Long> bytes =
                answers.curves().get(0).points().stream().map(SizePoint::bytes).toList();
        Stream<Crossing> crossings = answers.pairs().stream().flatMap(it -> it.crossings().stream());
        return new SizeChart(
                SIZE_MARKS,
                TIME_MARKS,
                bytes,
                bytes.stream().map(SizeText::size).toList(),
                answers.curves().stream().map(Line::of).toList(),
                crossings
                        .map(it -> new Change(SizeTables.pair(answers, it), it.bytes()))
                        .toList());
    }

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        ModeOrder order = new ModeOrder(modes.stream().map(Line::mode).toList());
        double low = times().min().orElse(1) / MARGIN;
        double high = MARGIN * times().max().orElse(60);
        List<Tick> up = ticks(timeMarks, low, high);
        double top = Legend.draw(svg, 0, order.lines()) + svg.size();
        Plot plot = new Plot(
                svg,
                Scale.logarithmic(
                        bytes.get(0), bytes.get(bytes.size() - 1) * 1.0, Plot.roomLeft(svg, up), width - svg.size()),
                Scale.logarithmic(low, high, top + HEIGHT, top));
        List<Double> at = bytes.stream().map(Long::doubleValue).toList();
        plot.axisLeft(up);
        modes.forEach(it -> plot.ribbon("band " + order.style(it.mode()), at, it.tenth(), it.ninth()));
        plot.axisBelow(ticks(sizeMarks, plot.across().low(), plot.across().high()), "size of the file");
        modes.forEach(it -> plot.parts("line " + order.style(it.mode()), points(it)));
        crossings.forEach(it -> plot.upright("change", it.bytes().value()));
        plot.columns(at, IntStream.range(0, bytes.size()).mapToObj(this::says).toList());
        double y = plot.bottom() + Plot.roomBelow(svg);
        for (Change change : crossings) {
            y = svg.paragraph("", 0, y, width, change.says()) + svg.size() * 0.6;
            Plot.whisker(
                    svg,
                    "",
                    plot.across(),
                    change.bytes().low(),
                    change.bytes().value(),
                    change.bytes().high(),
                    y);
            y += svg.size();
        }
        return svg.finished(y);
    }

    private DoubleStream times() {
        return modes.stream()
                .flatMap(it -> Stream.of(it.tenth(), it.median(), it.ninth()))
                .flatMap(List::stream)
                .mapToDouble(Double::doubleValue)
                .filter(it -> it > 0 && Double.isFinite(it));
    }

    private static List<Tick> ticks(List<Mark> marks, double low, double high) {
        return marks.stream()
                .filter(it -> it.at() >= low && it.at() <= high)
                .map(it -> new Tick(it.at(), it.label()))
                .toList();
    }

    private List<Point> points(Line mode) {
        return IntStream.range(0, bytes.size())
                .mapToObj(i -> new Point(bytes.get(i), mode.median().get(i)))
                .toList();
    }

    private String says(int index) {
        return sizes.get(index) + ": through by, on 5 of 10 trials (9 of 10)\n"
                + modes.stream()
                        .map(it -> it.mode() + ": " + it.says().get(index))
                        .collect(Collectors.joining("\n"));
    }
}
