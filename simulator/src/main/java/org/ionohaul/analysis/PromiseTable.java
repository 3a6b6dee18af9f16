package org.ionohaul.analysis;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.SizeGrid;
import org.ionohaul.study.SizeTransfers;
import org.ionohaul.study.StudyResult;

/**
 * What may be promised with one mode in one direction.
 *
 * <p>Read off {@link SizeTransfers}. Sizes are tried from the smallest up until the first that is not kept, so that all of
 * them together err no more often than one; a promise never falls with a later deadline, and never rises with a higher
 * confidence.
 */
final class PromiseTable {
    private final Direction direction;
    private final SizeTimes times;
    private final int modes;

    private PromiseTable(Direction direction, SizeTimes times, int modes) {
        this.direction = direction;
        this.times = times;
        this.modes = modes;
    }

    /**
     * Returns one table a mode, in the scenario's order.
     *
     * @param result a study of {@link SizeTransfers}
     * @param direction a direction that occurs in it
     */
    static List<PromiseTable> of(StudyResult result, Direction direction) {
        List<SizeTimes> modes = SizeTimes.of(result, direction);
        return modes.stream()
                .map(times -> new PromiseTable(direction, times, modes.size()))
                .toList();
    }

    /**
     * Returns which modes keep a deadline most often with files of one size, as far as they can be told apart.
     *
     * @param tables one a mode, at least one
     * @param bytes the size, rounded up to the next of {@link SizeGrid}; 1 or more
     * @param deadlineSeconds by when, in seconds after pressing send
     */
    static Leaders leaders(List<PromiseTable> tables, long bytes, double deadlineSeconds) {
        int size = SizeGrid.indexNotBelow(bytes);
        return SubsetSelection.ofDeadline(
                tables.stream().map(it -> it.times.seconds(size)).toList(), deadlineSeconds);
    }

    /** Returns which way. */
    Direction direction() {
        return direction;
    }

    /** Returns the mode. */
    Mode mode() {
        return times.mode();
    }

    /**
     * Returns the largest file that may be promised.
     *
     * @param deadlineSeconds by when, in seconds after pressing send, within the time watched
     * @param confidence how sure, above 0, below 1
     */
    Promise largestFile(double deadlineSeconds, double confidence) {
        List<Estimate> seconds = times.quantiles(confidence);
        int fewestTrials = SafeTime.of(confidence, times.ordered(0), modes).fewestTrials();
        int safe = kept(size -> safeSeconds(size, confidence), deadlineSeconds);
        return new Promise(
                deadlineSeconds,
                confidence,
                new Estimate(
                        bytes(kept(size -> seconds.get(size).value(), deadlineSeconds)),
                        bytes(safe),
                        bytes(kept(size -> seconds.get(size).low(), deadlineSeconds))),
                fewestTrials,
                times.ordered(0).size() >= fewestTrials,
                limits(Math.min(safe, times.sizes() - 1), deadlineSeconds));
    }

    /**
     * Returns from which deadline on files of each size may be promised, in seconds, infinite if by none; never falls with the
     * size. {@link #largestFile} read the other way round.
     *
     * @param confidence how sure, above 0, below 1
     */
    List<Double> soonestDeadlines(double confidence) {
        double[] seconds = IntStream.range(0, times.sizes())
                .mapToDouble(size -> safeSeconds(size, confidence))
                .toArray();
        Arrays.parallelPrefix(seconds, Math::max);
        return DoubleStream.of(seconds).boxed().toList();
    }

    private double safeSeconds(int size, double confidence) {
        return SafeTime.of(confidence, times.ordered(size), modes).seconds().orElse(Double.POSITIVE_INFINITY);
    }

    private Limits limits(int size, double deadlineSeconds) {
        return Limits.of(times.source(size).rows(), row -> row.reachedSeconds(size), deadlineSeconds);
    }

    private int kept(IntToDoubleFunction seconds, double deadlineSeconds) {
        return (int) IntStream.range(0, times.sizes())
                .takeWhile(size -> seconds.applyAsDouble(size) <= deadlineSeconds)
                .count();
    }

    private static long bytes(int kept) {
        return kept == 0 ? 0 : SizeGrid.BYTES.get(kept - 1);
    }
}
