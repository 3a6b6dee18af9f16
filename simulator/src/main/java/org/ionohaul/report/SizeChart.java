package org.ionohaul.report;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.ionohaul.study.Crossing;
import org.ionohaul.study.SizeAnswers;
import org.ionohaul.study.SizeCurve;
import org.ionohaul.study.SizePoint;

/**
 * A picture of completion time against file size: a line a mode through what 5 of 10 evenings keep, its band from 1 of 10
 * to 9 of 10, and upright lines where two modes change places.
 */
final class SizeChart {
    private static final double WIDTH = 480;
    private static final double HEIGHT = 340;
    private static final double LEFT = 52;
    private static final double RIGHT = 16;
    private static final double TOP = 14;
    private static final double BOTTOM = 44;
    private static final double LABEL_DROP = 18;
    private static final List<Double> SIZE_MARKS = List.of(1e3, 2e3, 5e3, 1e4, 2e4, 5e4, 1e5, 2e5, 5e5, 1e6);
    private static final List<Double> TIME_MARKS =
            List.of(1.0, 3.0, 10.0, 30.0, 60.0, 180.0, 600.0, 1800.0, 3600.0, 10800.0, 36000.0, 86400.0);

    private final Svg svg;
    private final LogScale sizes;
    private final LogScale times;

    private SizeChart(Svg svg, LogScale sizes, LogScale times) {
        this.svg = svg;
        this.sizes = sizes;
        this.times = times;
    }

    /**
     * Returns the picture.
     *
     * @param id a name unique on the page
     * @param answers curves with at least one point each
     */
    static String svg(String id, SizeAnswers answers) {
        List<SeriesLegend.Entry> legend = SeriesLegend.of(
                answers.curves().stream().map(it -> it.mode().title()).toList());
        Svg svg = new Svg(
                id,
                WIDTH,
                HEIGHT + SeriesLegend.height(legend),
                "Time against file size",
                "One rising line a mode; the lower, the sooner a file of that size is through. The tables beside it have"
                        + " the numbers.");
        SizeChart chart = new SizeChart(svg, sizes(answers), times(answers));
        chart.drawGrid();
        answers.duels().stream().flatMap(it -> it.crossing().stream()).forEach(chart::drawCrossing);
        for (int i = 0; i < answers.curves().size(); i++) {
            chart.drawBand(answers.curves().get(i), Palette.colour(i));
        }
        for (int i = 0; i < answers.curves().size(); i++) {
            svg.stroke(chart.median(answers.curves().get(i)), Palette.colour(i), 2.2, Palette.dash(i));
        }
        SeriesLegend.draw(svg, legend, LEFT, HEIGHT + 10, WIDTH);
        return svg.finished();
    }

    private static LogScale sizes(SizeAnswers answers) {
        List<SizePoint> points = answers.curves().get(0).points();
        return new LogScale(points.get(0).bytes(), points.get(points.size() - 1).bytes());
    }

    private static LogScale times(SizeAnswers answers) {
        double[] seconds = answers.curves().stream()
                .flatMap(it -> it.points().stream())
                .flatMapToDouble(it -> DoubleStream.of(
                        it.tenthSeconds().value(),
                        it.medianSeconds().value(),
                        it.ninthSeconds().value()))
                .filter(it -> Double.isFinite(it) && it > 0)
                .toArray();
        double low = DoubleStream.of(seconds).min().orElse(1);
        double high = DoubleStream.of(seconds).max().orElse(60);
        return new LogScale(low / 1.2, Math.max(high, low * 2) * 1.2);
    }

    private void drawGrid() {
        for (double size : sizes.among(SIZE_MARKS)) {
            svg.line(x(size), TOP, x(size), HEIGHT - BOTTOM, Palette.RULE, 1, "none");
        }
        for (double size : sizes.among(List.of(1e3, 1e4, 1e5, 1e6))) {
            Svg.Anchor anchor = sizes.share(size) > 0.95 ? Svg.Anchor.END : Svg.Anchor.MIDDLE;
            svg.text(x(size), HEIGHT - BOTTOM + LABEL_DROP, anchor, Palette.FAINT, SizeText.size((long) size));
        }
        for (double time : times.among(TIME_MARKS)) {
            svg.line(LEFT, y(time), WIDTH - RIGHT, y(time), Palette.RULE, 1, "none");
            svg.text(LEFT - 6, y(time) + 4, Svg.Anchor.END, Palette.FAINT, TimeText.given(time));
        }
        svg.text(
                (LEFT + WIDTH - RIGHT) / 2,
                HEIGHT - BOTTOM + 2 * LABEL_DROP,
                Svg.Anchor.MIDDLE,
                Palette.FAINT,
                "size of the file; time to the left");
    }

    private void drawCrossing(Crossing crossing) {
        double x = x(crossing.bytes().value());
        svg.line(x, TOP, x, HEIGHT - BOTTOM, Palette.ALERT, 1, "2 3");
    }

    private void drawBand(SizeCurve curve, String colour) {
        List<SizePoint> reached = curve.points().stream()
                .filter(it -> Double.isFinite(it.ninthSeconds().value()))
                .toList();
        if (!reached.isEmpty()) {
            SvgPath band = new SvgPath();
            reached.forEach(
                    it -> band.to(x((double) it.bytes()), y(it.ninthSeconds().value())));
            for (int i = reached.size() - 1; i >= 0; i--) {
                SizePoint point = reached.get(i);
                band.to(x((double) point.bytes()), y(point.tenthSeconds().value()));
            }
            svg.fill(band.close(), colour, 0.15);
        }
    }

    private SvgPath median(SizeCurve curve) {
        SvgPath path = new SvgPath();
        Stream<SizePoint> reached = curve.points().stream()
                .filter(it -> Double.isFinite(it.medianSeconds().value()));
        reached.forEach(
                it -> path.to(x((double) it.bytes()), y(it.medianSeconds().value())));
        return path;
    }

    private double x(double bytes) {
        return LEFT + (WIDTH - LEFT - RIGHT) * sizes.share(bytes);
    }

    private double y(double seconds) {
        return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * times.share(seconds);
    }
}
