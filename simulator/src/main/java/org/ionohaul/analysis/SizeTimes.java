package org.ionohaul.analysis;

import java.util.ArrayList;
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
 * <p>Sizes that are sent, see {@link SizeTransfers}, have sessions of their own: chance differs from one to the next larger
 * one, and a trial may have the larger file sooner. Each trial's times stay as they came, so that pairs and paces compare
 * what happened. That a larger file never takes less time is true of the distribution, so that is where it is made to hold:
 * quantiles and shares are {@link Rearranged rearranged} over sizes.
 *
 * <p>Sizes that are not sent are read off the next larger transfer, whose longer overs may make them up to an over late.
 * What is said of them leaves that open.
 */
final class SizeTimes {
    private final Mode mode;
    private final List<ModeTrials> sources;
    private final boolean[] isSent;
    private final double[][] secondsBySize;
    private final List<OrderedSample> ordered;

    private SizeTimes(Mode mode, List<ModeTrials> sources, boolean[] isSent, double[][] secondsBySize) {
        this.mode = mode;
        this.sources = sources;
        this.isSent = isSent;
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
        int sizes = SizeGrid.countUpTo(longest.transfer().totalBytes());
        List<ModeTrials> sources = new ArrayList<>();
        boolean[] isSent = new boolean[sizes];
        double[][] seconds = new double[sizes][];
        for (int size = 0; size < sizes; size++) {
            CaseTrials source = nextLarger(rising, size);
            sources.add(source.modes().get(mode));
            isSent[size] = source.transfer().totalBytes() == SizeGrid.BYTES.get(size);
            seconds[size] = sources.get(size).reachedSeconds(size);
        }
        return new SizeTimes(longest.modes().get(mode).mode(), List.copyOf(sources), isSent, seconds);
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

    /** Returns whether files of a size were sent; else the size is read off a later transfer. */
    boolean isSent(int sizeIndex) {
        return isSent[sizeIndex];
    }

    /** Returns by how much the times for one size may be late at most, in seconds; nothing if such files are sent. */
    double lateSeconds(int sizeIndex) {
        return isSent[sizeIndex] ? 0 : mode.longestOverSeconds();
    }

    /** Returns the times for one size in rising order; they may be late, see {@link #lateSeconds}. */
    OrderedSample ordered(int sizeIndex) {
        return ordered.get(sizeIndex);
    }

    /**
     * Returns the time that a share of trials keeps, in seconds, infinite if not reached, an entry a size; never falls. Its
     * lower end leaves open that the times are late.
     */
    List<Estimate> quantiles(double probability) {
        return Rearranged.rising(IntStream.range(0, sizes())
                .mapToObj(size -> {
                    Estimate found = ordered.get(size).quantile(probability, Estimate.CONFIDENCE);
                    return new Estimate(found.value(), Math.max(0, found.low() - lateSeconds(size)), found.high());
                })
                .toList());
    }

    /** Returns the share of trials that got so far, an entry a size; never rises. */
    List<Estimate> reached() {
        return Rearranged.falling(ordered.stream()
                .map(it -> it.atMost(Double.MAX_VALUE).wilson(Estimate.CONFIDENCE))
                .toList());
    }
}
