package org.ionohaul.analysis;

import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.statistics.Estimate;

/**
 * What a mode comes to in one case with some keys set to values of their own.
 *
 * @param delivered share of trials in which everything was delivered
 * @param medianSeconds the completion time that 5 of 10 trials keep; infinite if not reached
 * @param ninthSeconds the completion time that 9 of 10 trials keep; infinite if not reached
 * @param deadlines chance of each deadline
 * @param effect what changed against the reference
 */
public record ModePoint(
        Estimate delivered,
        Estimate medianSeconds,
        Estimate ninthSeconds,
        List<DeadlineChance> deadlines,
        PairedEffect effect) {
    /** Copies the list. */
    public ModePoint {
        deadlines = List.copyOf(deadlines);
    }

    static ModePoint of(ModeSummary summary, PairedEffect effect) {
        return new ModePoint(
                summary.delivered(), summary.medianSeconds(), summary.ninthSeconds(), summary.deadlines(), effect);
    }

    /** Returns the modes of a case. */
    static List<ModePoint> all(CaseSummary summary, List<PairedEffect> effects) {
        return IntStream.range(0, effects.size())
                .mapToObj(mode -> of(summary.modes().get(mode), effects.get(mode)))
                .toList();
    }
}
