package org.ionohaul.study;

import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Mode;
import org.ionohaul.statistics.OrderedSample;

/**
 * Completion time against file size for one mode, see {@link SizeTransfers}.
 *
 * @param mode the mode
 * @param points one entry a size of {@link SizeGrid} up to the longest transfer's, rising
 * @param pace the curve in five numbers
 */
public record SizeCurve(Mode mode, List<SizePoint> points, Pace pace) {
    /** Copies the list. */
    public SizeCurve {
        points = List.copyOf(points);
    }

    /** Returns the curve of a mode. */
    static SizeCurve of(SizeTimes times) {
        List<SizePoint> points = IntStream.range(0, times.sizes())
                .mapToObj(i -> point(SizeGrid.BYTES.get(i), OrderedSample.of(times.seconds(i))))
                .toList();
        return new SizeCurve(times.mode(), points, Pace.of(times));
    }

    private static SizePoint point(long bytes, OrderedSample reached) {
        return new SizePoint(
                bytes,
                ModeSummary.notNegative(reached, 0.1),
                ModeSummary.notNegative(reached, 0.5),
                ModeSummary.notNegative(reached, 0.9),
                reached.atMost(Double.MAX_VALUE).wilson(ModeSummary.CONFIDENCE));
    }
}
