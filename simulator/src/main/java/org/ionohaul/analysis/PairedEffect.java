package org.ionohaul.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.statistics.DiscordantPairs;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.HolmCorrection;
import org.ionohaul.statistics.PairedTimes;

/**
 * What a change did to a mode, trial by trial under the same skies. Intervals have confidence {@link Estimate#CONFIDENCE},
 * each by itself, but for one; what is beyond chance is so after correction for all that is told of a case.
 *
 * @param medianChangeSeconds median change of completion time, in seconds, below zero if it became quicker; over trials in
 *     which it delivers before or after the change; infinite if in most of them it delivers only before or only after
 * @param sureChangeSeconds the same with an interval that is so wide that those of all changes of a case hold together
 * @param quickerTrials in how many trials it delivers sooner
 * @param slowerTrials in how many trials it delivers later
 * @param pValue chance of so uneven a split if the change did nothing
 * @param isBeyondChance whether it became quicker or slower on more trials beyond chance
 * @param deadlineChanges for each deadline, how much more often it is kept, as a share from -1 to 1
 * @param deadlinesBeyondChance for each deadline, whether that is beyond chance
 * @param varianceRatio variance of the change over what it would be without common skies, over trials in which it delivers
 *     before and after; NaN if it can't be told
 */
public record PairedEffect(
        Estimate medianChangeSeconds,
        Estimate sureChangeSeconds,
        int quickerTrials,
        int slowerTrials,
        double pValue,
        boolean isBeyondChance,
        List<Estimate> deadlineChanges,
        List<Boolean> deadlinesBeyondChance,
        double varianceRatio) {
    /** Copies the list. */
    public PairedEffect {
        deadlineChanges = List.copyOf(deadlineChanges);
        deadlinesBeyondChance = List.copyOf(deadlinesBeyondChance);
    }

    /** Returns the deadline, by its place, whose chance changes most of those that change beyond chance; empty if none does. */
    public OptionalInt mostChangedDeadline() {
        return IntStream.range(0, deadlineChanges.size())
                .filter(deadlinesBeyondChance::get)
                .boxed()
                .max(Comparator.comparingDouble(
                        i -> Math.abs(deadlineChanges.get(i).value())))
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    /** Returns whether it became sooner: by the median or, where that is nothing, on more trials. */
    public boolean isSooner() {
        double seconds = medianChangeSeconds.value();
        return seconds == 0 ? quickerTrials > slowerTrials : seconds < 0;
    }

    /** Returns whether the change did nothing in any trial, to times or to deadlines kept. */
    public boolean isNothing() {
        return !changesAnything() && deadlineChanges.stream().allMatch(it -> it.value() == 0);
    }

    /** Returns whether any trial became quicker or slower at all. */
    public boolean changesAnything() {
        return quickerTrials + slowerTrials > 0;
    }

    /**
     * Compares a mode's trials before and after a change.
     *
     * @param times completion times, before first
     * @param deadlinesBefore deadlines before the change
     * @param deadlinesAfter as many deadlines, after the change
     * @param errorRate chance that is accepted that any change is told that is none, of time or of a deadline
     */
    static PairedEffect of(
            PairedTimes times, List<Double> deadlinesBefore, List<Double> deadlinesAfter, double errorRate) {
        List<DiscordantPairs> kept = IntStream.range(0, deadlinesBefore.size())
                .mapToObj(i -> times.deadlineKeptByOne(deadlinesBefore.get(i), deadlinesAfter.get(i)))
                .toList();
        double[] pValues = Stream.concat(Stream.of(times.signs()), kept.stream())
                .mapToDouble(DiscordantPairs::exactPValue)
                .toArray();
        boolean[] tells = HolmCorrection.rejects(pValues, errorRate);
        return new PairedEffect(
                times.lead(0.5, Estimate.CONFIDENCE),
                times.lead(0.5, 1 - errorRate),
                times.secondBefore().hits(),
                times.firstBefore().hits(),
                pValues[0],
                tells[0],
                kept.stream()
                        .map(it ->
                                negative(it.shareDifference(times.firstBefore().total(), Estimate.CONFIDENCE)))
                        .toList(),
                IntStream.range(1, tells.length).mapToObj(i -> tells[i]).toList(),
                times.varianceRatio());
    }

    private static Estimate negative(Estimate estimate) {
        // Zero has a sign, which must not show.
        return new Estimate(0 - estimate.value(), 0 - estimate.high(), 0 - estimate.low());
    }
}
