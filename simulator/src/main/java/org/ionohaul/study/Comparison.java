package org.ionohaul.study;

import java.util.Iterator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.Cause;
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
 * @param savedSeconds how much less time the first spends on each cause a trial, in seconds, mean over the trials in which
 *     both deliver; empty if there are none
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
        DiscordantPairs delivered,
        List<CauseTime> savedSeconds) {
    private static final List<Cause> CAUSES = List.of(Cause.values());

    /** Copies the lists. */
    public Comparison {
        deadlines = List.copyOf(deadlines);
        savedSeconds = List.copyOf(savedSeconds);
    }

    /** Compares every two modes, in the order given. */
    static List<Comparison> all(List<ModeTrials> modes, Transfer transfer) {
        return IntStream.range(0, modes.size())
                .boxed()
                .flatMap(first -> modes.stream()
                        .skip(first + 1L)
                        .map(second -> of(modes.get(first), second, transfer.deadlinesSeconds())))
                .toList();
    }

    /**
     * Compares two modes.
     *
     * @param first trials of the one
     * @param second trials of the other, under the same skies
     * @param deadlinesSeconds deadlines, in seconds after pressing send
     */
    public static Comparison of(ModeTrials first, ModeTrials second, List<Double> deadlinesSeconds) {
        double[] firstSeconds = first.completionSeconds();
        double[] secondSeconds = second.completionSeconds();
        PairedTimes times = PairedTimes.of(firstSeconds, secondSeconds);
        return new Comparison(
                first.mode().name(),
                second.mode().name(),
                times.firstBefore(),
                times.secondBefore(),
                times.neither(),
                times.firstBefore().wilson(ModeSummary.CONFIDENCE),
                times.lead(0.5, ModeSummary.CONFIDENCE),
                times.signs().exactPValue(),
                times.varianceRatio(),
                times.furthestAhead(),
                PairedTimes.of(secondSeconds, firstSeconds).furthestAhead(),
                deadlinesSeconds.stream().map(times::deadlineKeptByOne).toList(),
                times.deadlineKeptByOne(Double.MAX_VALUE),
                savedSeconds(first, second));
    }

    private static List<CauseTime> savedSeconds(ModeTrials first, ModeTrials second) {
        double[] sums = new double[CAUSES.size()];
        int both = 0;
        Iterator<TrialRow> others = second.rows().iterator();
        for (TrialRow row : first.rows()) {
            TrialRow other = others.next();
            if (row.deliveredNanos().isPresent() && other.deliveredNanos().isPresent()) {
                both++;
                for (int i = 0; i < sums.length; i++) {
                    sums[i] += (other.budgetNanos(CAUSES.get(i)) - row.budgetNanos(CAUSES.get(i))) / 1e9;
                }
            }
        }
        int trials = both;
        return trials == 0
                ? List.of()
                : IntStream.range(0, sums.length)
                        .mapToObj(i -> new CauseTime(CAUSES.get(i), sums[i] / trials))
                        .toList();
    }
}
