package org.ionohaul.study;

import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.PairedTimes;
import org.ionohaul.statistics.Proportion;

/**
 * What a change did to a mode, trial by trial under the same skies.
 *
 * @param medianChangeSeconds median change of completion time, in seconds, below zero if it became quicker; over trials in
 *     which it delivers before or after the change
 * @param quicker in how many trials it delivers sooner
 * @param slower in how many trials it delivers later
 * @param pValue chance of so uneven a split if the change did nothing
 */
public record PairedEffect(Estimate medianChangeSeconds, Proportion quicker, Proportion slower, double pValue) {
    /** Compares a mode's trials before and after a change. */
    static PairedEffect of(ModeTrials before, ModeTrials after) {
        PairedTimes times = PairedTimes.of(before.completionSeconds(), after.completionSeconds());
        return new PairedEffect(
                times.lead(0.5, ModeSummary.CONFIDENCE),
                times.secondBefore(),
                times.firstBefore(),
                times.signs().exactPValue());
    }
}
