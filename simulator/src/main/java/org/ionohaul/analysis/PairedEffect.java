package org.ionohaul.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.ionohaul.statistics.DiscordantPairs;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.HolmCorrection;
import org.ionohaul.statistics.PairedTimes;

/**
 * What a change did to a mode, trial by trial under the same skies. All intervals have confidence {@link
 * Estimate#CONFIDENCE}.
 *
 * @param medianChangeSeconds median change of completion time, in seconds, below zero if it became quicker; over trials in
 *     which it delivers before or after the change; infinite if in most of them it delivers only before or only after
 * @param quickerTrials in how many trials it delivers sooner
 * @param slowerTrials in how many trials it delivers later
 * @param pValue chance of so uneven a split if the change did nothing
 * @param deadlineChanges for each deadline, how much more often it is kept, as a share from -1 to 1
 * @param deadlinePValues for each deadline, the chance of so uneven a split of the trials on which one of the two keeps it, if the
 *     change did nothing
 * @param varianceRatio variance of the change over what it would be without common skies, over trials in which it delivers
 *     before and after; NaN if it can't be told
 */
public record PairedEffect(
        Estimate medianChangeSeconds,
        int quickerTrials,
        int slowerTrials,
        double pValue,
        List<Estimate> deadlineChanges,
        List<Double> deadlinePValues,
        double varianceRatio) {
    /**
     * What may be said of a change.
     *
     * @param isOfTime whether the time changes beyond chance
     * @param mostChangedDeadline the deadline, by its place, whose chance changes most of those that change beyond chance
     */
    public record Told(boolean isOfTime, OptionalInt mostChangedDeadline) {
        /** Returns whether there is nothing to say. */
        public boolean isNothing() {
            return !isOfTime && mostChangedDeadline.isEmpty();
        }
    }

    /** Copies the lists. */
    public PairedEffect {
        deadlineChanges = List.copyOf(deadlineChanges);
        deadlinePValues = List.copyOf(deadlinePValues);
    }

    /** Returns whether so uneven a split of quicker and slower trials can hardly be chance, looked at by itself. */
    public boolean isBeyondChance() {
        return pValue < 1 - Estimate.CONFIDENCE;
    }

    /**
     * Returns what may be said so that anything of it is wrong in at most 5 of 100 studies: the tests of the time and of all
     * deadlines are corrected for their number (Holm), and for that of the effects among which this one was picked
     * (Bonferroni).
     *
     * @param choices how many effects were looked at, 1 or more
     */
    public Told told(int choices) {
        List<Double> pValues = new ArrayList<>(deadlinePValues);
        pValues.add(pValue);
        boolean[] tells = HolmCorrection.rejects(
                pValues.stream().mapToDouble(it -> it).toArray(), (1 - Estimate.CONFIDENCE) / choices);
        return new Told(
                tells[deadlinePValues.size()],
                IntStream.range(0, deadlinePValues.size())
                        .filter(i -> tells[i])
                        .boxed()
                        .max(Comparator.comparingDouble(
                                i -> Math.abs(deadlineChanges.get(i).value())))
                        .map(OptionalInt::of)
                        .orElse(OptionalInt.empty()));
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
     */
    static PairedEffect of(PairedTimes times, List<Double> deadlinesBefore, List<Double> deadlinesAfter) {
        List<DiscordantPairs> deadlines = IntStream.range(0, deadlinesBefore.size())
                .mapToObj(i -> times.deadlineKeptByOne(deadlinesBefore.get(i), deadlinesAfter.get(i)))
                .toList();
        return new PairedEffect(
                times.lead(0.5, Estimate.CONFIDENCE),
                times.secondBefore().hits(),
                times.firstBefore().hits(),
                times.signs().exactPValue(),
                deadlines.stream()
                        .map(it ->
                                negative(it.shareDifference(times.firstBefore().total(), Estimate.CONFIDENCE)))
                        .toList(),
                deadlines.stream().map(DiscordantPairs::exactPValue).toList(),
                times.varianceRatio());
    }

    private static Estimate negative(Estimate estimate) {
        // Zero has a sign, which must not show.
        return new Estimate(0 - estimate.value(), 0 - estimate.high(), 0 - estimate.low());
    }
}
