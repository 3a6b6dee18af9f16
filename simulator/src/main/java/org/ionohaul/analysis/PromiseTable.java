package org.ionohaul.analysis;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.SizeGrid;
import org.ionohaul.study.SizeTransfers;
import org.ionohaul.study.StudyResult;

/**
 * What may be promised with one mode in one direction, and its inverse.
 *
 * <p>Read off the progress of {@link SizeTransfers}. The time that a share of trials keeps never falls with size (it is
 * rearranged to, see {@link SizeTimes}) nor with the share; so a promise never falls with a later deadline, and never rises
 * with a higher confidence.
 */
public final class PromiseTable {
    private final Direction direction;
    private final SizeTimes times;

    private PromiseTable(Direction direction, SizeTimes times) {
        this.direction = direction;
        this.times = times;
    }

    /**
     * Returns one table a mode, in the scenario's order.
     *
     * @param result a study of {@link SizeTransfers}
     * @param direction a direction that occurs in it
     */
    public static List<PromiseTable> of(StudyResult result, Direction direction) {
        return SizeTimes.of(result, direction).stream()
                .map(times -> new PromiseTable(direction, times))
                .toList();
    }

    /** Returns which way. */
    public Direction direction() {
        return direction;
    }

    /** Returns the mode. */
    public Mode mode() {
        return times.mode();
    }

    /**
     * Returns the largest file that may be promised.
     *
     * @param deadlineSeconds by when, in seconds after pressing send, within the time watched
     * @param confidence how sure, above 0, below 1
     */
    public Promise largestFile(double deadlineSeconds, double confidence) {
        List<Estimate> seconds = times.quantiles(confidence);
        return new Promise(
                deadlineSeconds,
                confidence,
                new Estimate(
                        largest(seconds, Estimate::value, deadlineSeconds),
                        largest(seconds, Estimate::high, deadlineSeconds),
                        largest(seconds, Estimate::low, deadlineSeconds)));
    }

    /**
     * Returns the deadline that may be promised, in seconds after pressing send; infinite if none within the time
     * watched.
     *
     * @param bytes size of the file, rounded up to the next of {@link SizeGrid}; 1 or more
     * @param confidence how sure, above 0, below 1
     * @throws IllegalArgumentException if the file is larger than the longest transfer
     */
    public Estimate deadline(long bytes, double confidence) {
        int index = SizeGrid.indexNotBelow(bytes);
        if (index >= times.sizes()) {
            throw new IllegalArgumentException("bytes must not exceed the longest transfer's: " + bytes);
        }
        return times.quantiles(confidence).get(index);
    }

    private static long largest(List<Estimate> seconds, ToDoubleFunction<Estimate> end, double deadlineSeconds) {
        int kept = (int) seconds.stream()
                .takeWhile(each -> end.applyAsDouble(each) <= deadlineSeconds)
                .count();
        return kept == 0 ? 0 : SizeGrid.BYTES.get(kept - 1);
    }
}
