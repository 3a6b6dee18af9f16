package org.ionohaul.analysis;

import java.util.List;
import java.util.OptionalInt;
import org.ionohaul.statistics.DiscordantPairs;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.PairedTimes;
import org.ionohaul.statistics.Proportion;

/**
 * Two modes under the same skies, trial by trial.
 *
 * @param first name of the one mode
 * @param second name of the other
 * @param firstBefore in how many trials the first delivered before the second
 * @param secondBefore in how many trials the second delivered before the first
 * @param neither in how many trials neither delivered
 * @param firstBeforeShare share of {@code firstBefore}, with interval
 * @param medianLeadSeconds median of how much earlier the first delivers, in seconds, over trials in which at least one
 *     delivers; infinite if mostly just one does
 * @param signPValue chance of so uneven a split if neither came first more often (exact sign test)
 * @param varianceRatio variance of the difference over the sum of both modes' variances, over trials in which both
 *     deliver: how much the common sky sharpens the comparison, 1 is not at all; NaN if it can't be told
 * @param firstFurthestAhead number of the trial in which the first was furthest ahead; empty if it never was
 * @param secondFurthestAhead number of the trial in which the second was furthest ahead; empty if it never was
 * @param deadlines for each deadline, the trials in which just one of the two kept it
 * @param delivered the trials in which just one of the two delivered everything
 */
public record Comparison(
        String first,
        String second,
        Proportion firstBefore,
        Proportion secondBefore,
        Proportion neither,
        Estimate firstBeforeShare,
        Estimate medianLeadSeconds,
        double signPValue,
        double varianceRatio,
        OptionalInt firstFurthestAhead,
        OptionalInt secondFurthestAhead,
        List<DiscordantPairs> deadlines,
        DiscordantPairs delivered) {
    /** Copies the list. */
    public Comparison {
        deadlines = List.copyOf(deadlines);
    }

    /** Returns in how many trials both delivered at the same instant. */
    public Proportion atOnce() {
        int untied = firstBefore.hits() + secondBefore.hits() + neither.hits();
        return new Proportion(neither.total() - untied, neither.total());
    }

    /**
     * Compares two modes.
     *
     * @param first name of the one
     * @param firstSeconds its completion times, infinite where it never delivers, an entry a trial
     * @param second name of the other
     * @param secondSeconds its completion times under the same skies
     * @param deadlinesSeconds deadlines, in seconds after pressing send
     */
    static Comparison of(
            String first, double[] firstSeconds, String second, double[] secondSeconds, List<Double> deadlinesSeconds) {
        PairedTimes times = PairedTimes.of(firstSeconds, secondSeconds);
        return new Comparison(
                first,
                second,
                times.firstBefore(),
                times.secondBefore(),
                times.neither(),
                times.firstBefore().wilson(Estimate.CONFIDENCE),
                times.lead(0.5, Estimate.CONFIDENCE),
                times.signs().exactPValue(),
                times.varianceRatio(),
                times.furthestAhead(),
                PairedTimes.of(secondSeconds, firstSeconds).furthestAhead(),
                deadlinesSeconds.stream().map(times::deadlineKeptByOne).toList(),
                times.deadlineKeptByOne(Double.MAX_VALUE));
    }
}
