package org.ionohaul.study;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;

/** When one mode has files of each size through in one direction, trial by trial. */
final class SizeTimes {
    private final Mode mode;
    private final List<TrialRow> longest;
    private final double[][] secondsBySize;

    private SizeTimes(Mode mode, List<TrialRow> longest, double[][] secondsBySize) {
        this.mode = mode;
        this.longest = longest;
        this.secondsBySize = secondsBySize;
    }

    /**
     * Returns the times of every mode, in the scenario's order.
     *
     * @param result a study of {@link SizeTransfers}, or of any transfers as far as they go
     * @param direction a direction that occurs in it
     */
    static List<SizeTimes> of(StudyResult result, Direction direction) {
        List<CaseTrials> rising = result.cases().stream()
                .filter(it -> it.direction() == direction)
                .sorted(Comparator.comparingLong(it -> it.transfer().totalBytes()))
                .toList();
        return IntStream.range(0, result.scenario().modes().size())
                .mapToObj(mode -> of(rising, mode))
                .toList();
    }

    private static SizeTimes of(List<CaseTrials> rising, int mode) {
        CaseTrials longest = rising.get(rising.size() - 1);
        double[][] seconds = IntStream.range(
                        0, SizeGrid.countUpTo(longest.transfer().totalBytes()))
                .mapToObj(size -> nextLarger(rising, size).modes().get(mode).reachedSeconds(size))
                .toArray(double[][]::new);
        neverFalling(seconds);
        ModeTrials trials = longest.modes().get(mode);
        return new SizeTimes(trials.mode(), trials.rows(), seconds);
    }

    private static CaseTrials nextLarger(List<CaseTrials> rising, int size) {
        return rising.stream()
                .filter(it -> it.transfer().totalBytes() >= SizeGrid.BYTES.get(size))
                .findFirst()
                .orElseThrow();
    }

    /** Chance differs from one transfer to the next larger one; a file must not be quicker than a smaller one by that. */
    private static void neverFalling(double[][] secondsBySize) {
        for (int size = 1; size < secondsBySize.length; size++) {
            for (int trial = 0; trial < secondsBySize[size].length; trial++) {
                secondsBySize[size][trial] = Math.max(secondsBySize[size][trial], secondsBySize[size - 1][trial]);
            }
        }
    }

    Mode mode() {
        return mode;
    }

    /** Returns the rows of the largest transfer. */
    List<TrialRow> longest() {
        return longest;
    }

    /** Returns how many sizes of {@link SizeGrid} are answered. */
    int sizes() {
        return secondsBySize.length;
    }

    /** Returns each trial's time for one size, in seconds, infinite if not reached; not to be changed. */
    double[] seconds(int sizeIndex) {
        return secondsBySize[sizeIndex];
    }
}
