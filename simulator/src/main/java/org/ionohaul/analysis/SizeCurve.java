package org.ionohaul.analysis;

import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Mode;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.SizeGrid;
import org.ionohaul.study.SizeTransfers;

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
        List<Estimate> tenth = times.quantiles(0.1);
        List<Estimate> median = times.quantiles(0.5);
        List<Estimate> ninth = times.quantiles(0.9);
        List<Estimate> reached = times.reached();
        List<SizePoint> points = IntStream.range(0, times.sizes())
                .mapToObj(i -> new SizePoint(
                        SizeGrid.BYTES.get(i),
                        times.isSent(i),
                        tenth.get(i),
                        median.get(i),
                        ninth.get(i),
                        reached.get(i)))
                .toList();
        return new SizeCurve(times.mode(), points, Pace.of(times));
    }
}
