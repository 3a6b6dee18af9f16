package org.ionohaul.study;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.OrderedSample;

/**
 * What may be promised with one mode in one direction, and its inverse.
 *
 * <p>Read off the progress of {@link SizeTransfers}. As a larger file never counts as quicker, a promise never falls with
 * a later deadline, and never rises with a higher confidence.
 */
public final class PromiseTable {
    private final Direction direction;
    private final Mode mode;
    private final List<OrderedSample> reachedSeconds;

    private PromiseTable(Direction direction, Mode mode, List<OrderedSample> reachedSeconds) {
        this.direction = direction;
        this.mode = mode;
        this.reachedSeconds = reachedSeconds;
    }

    /**
     * Returns one table a mode, in the scenario's order.
     *
     * @param result a study of {@link SizeTransfers}
     * @param direction a direction that occurs in it
     */
    public static List<PromiseTable> of(StudyResult result, Direction direction) {
        return SizeTimes.of(result, direction).stream()
                .map(times -> new PromiseTable(direction, times.mode(), ordered(times)))
                .toList();
    }

    private static List<OrderedSample> ordered(SizeTimes times) {
        return IntStream.range(0, times.sizes())
                .mapToObj(i -> OrderedSample.of(times.seconds(i)))
                .toList();
    }

    /** Returns which way. */
    public Direction direction() {
        return direction;
    }

    /** Returns the mode. */
    public Mode mode() {
        return mode;
    }

    /**
     * Returns the largest file that may be promised.
     *
     * @param deadlineSeconds by when, in seconds after pressing send, within the time watched
     * @param confidence how sure, above 0, below 1
     */
    public Promise largestFile(double deadlineSeconds, double confidence) {
        List<Estimate> times = reachedSeconds.stream()
                .map(reached -> ModeSummary.notNegative(reached, confidence))
                .toList();
        return new Promise(
                deadlineSeconds,
                confidence,
                new Estimate(
                        largest(times, Estimate::value, deadlineSeconds),
                        largest(times, Estimate::high, deadlineSeconds),
                        largest(times, Estimate::low, deadlineSeconds)));
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
        if (index >= reachedSeconds.size()) {
            throw new IllegalArgumentException("bytes must not exceed the longest transfer's: " + bytes);
        }
        return ModeSummary.notNegative(reachedSeconds.get(index), confidence);
    }

    private static long largest(List<Estimate> times, ToDoubleFunction<Estimate> end, double deadlineSeconds) {
        int kept = (int) times.stream()
                .takeWhile(time -> end.applyAsDouble(time) <= deadlineSeconds)
                .count();
        return kept == 0 ? 0 : SizeGrid.BYTES.get(kept - 1);
    }
}
