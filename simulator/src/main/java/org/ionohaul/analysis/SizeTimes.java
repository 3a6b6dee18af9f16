package org.ionohaul.analysis;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.statistics.Rearranged;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.ModeTrials;
import org.ionohaul.study.SizeGrid;
import org.ionohaul.study.SizeTransfers;
import org.ionohaul.study.StudyResult;

/**
 * When one mode has files of each size through in one direction, trial by trial.
 *
 * <p>Sizes up to some are read off sessions of their own, see {@link SizeTransfers}: chance differs from one to the next
 * larger one, and a trial may have the larger file sooner. Each trial's times stay as they came, so that pairs and paces
 * compare what happened. That a larger file never takes less time is true of the distribution, so that is where it is made
 * to hold: quantiles and shares are {@link Rearranged rearranged} over sizes.
 */
final class SizeTimes {
    private final Mode mode;
    private final List<ModeTrials> sources;
    private final double[][] secondsBySize;
    private final List<OrderedSample> ordered;

    private SizeTimes(Mode mode, List<ModeTrials> sources, double[][] secondsBySize) {
        this.mode = mode;
        this.sources = sources;
        this.secondsBySize = secondsBySize;
        this.ordered = Arrays.stream(secondsBySize).map(OrderedSample::of).toList();
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
        List<ModeTrials> sources = IntStream.range(
                        0, SizeGrid.countUpTo(longest.transfer().totalBytes()))
                .mapToObj(size -> nextLarger(rising, size).modes().get(mode))
                .toList();
        double[][] seconds = IntStream.range(0, sources.size())
                .mapToObj(size -> sources.get(size).reachedSeconds(size))
                .toArray(double[][]::new);
        return new SizeTimes(longest.modes().get(mode).mode(), sources, seconds);
    }

    private static CaseTrials nextLarger(List<CaseTrials> rising, int size) {
        return rising.stream()
                .filter(it -> it.transfer().totalBytes() >= SizeGrid.BYTES.get(size))
                .findFirst()
                .orElseThrow();
    }

    Mode mode() {
        return mode;
    }

    /** Returns the trials that a size is read off. */
    ModeTrials source(int sizeIndex) {
        return sources.get(sizeIndex);
    }

    /** Returns how many sizes of {@link SizeGrid} are answered. */
    int sizes() {
        return secondsBySize.length;
    }

    /** Returns each trial's time for one size, in seconds, infinite if not reached; not to be changed. */
    double[] seconds(int sizeIndex) {
        return secondsBySize[sizeIndex];
    }

    /** Returns the time that a share of trials keeps, in seconds, infinite if not reached, an entry a size; never falls. */
    List<Estimate> quantiles(double probability) {
        return Rearranged.rising(ordered.stream()
                .map(it -> ModeSummary.notNegative(it, probability))
                .toList());
    }

    /** Returns the share of trials that got so far, an entry a size; never rises. */
    List<Estimate> reached() {
        return Rearranged.falling(ordered.stream()
                .map(it -> it.atMost(Double.MAX_VALUE).wilson(Estimate.CONFIDENCE))
                .toList());
    }
}
