package org.ionohaul.report;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ionohaul.analysis.Crossing;
import org.ionohaul.analysis.SizeAnswers;
import org.ionohaul.analysis.SizeCurve;
import org.ionohaul.analysis.SizePoint;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.ChartRecord;
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
        implements ChartRecord {
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
}
