package org.ionohaul.analysis;

import java.util.stream.Stream;
import org.ionohaul.statistics.Estimate;

/**
 * What one key alone does when it is set to either end of its range, against the scenario as it stands.
 *
 * @param key the key's full name
 * @param low the study with the first value
 * @param high the study with the last value
 */
public record TornadoBar(String key, VariationPoint low, VariationPoint high) {
    /**
     * Returns how much the key matters to a mode: the larger of the two median changes of completion time, in seconds,
     * whichever way; infinite if in the median trial it decides whether the mode delivers at all.
     */
    public double swingSeconds(int caseIndex, int mode) {
        return changes(caseIndex, mode)
                .mapToDouble(it -> Math.abs(it.value()))
                .max()
                .orElseThrow();
    }

    /** Returns the larger of the two changes of a mode's chance of a deadline, whichever way, from 0 to 1. */
    public double swingShare(int caseIndex, int mode, int deadline) {
        return Math.max(
                Math.abs(effect(low, caseIndex, mode)
                        .deadlineChanges()
                        .get(deadline)
                        .value()),
                Math.abs(effect(high, caseIndex, mode)
                        .deadlineChanges()
                        .get(deadline)
                        .value()));
    }

    /** Returns whether either end changes a mode's time beyond chance. */
    public boolean isBeyondChance(int caseIndex, int mode) {
        return effect(low, caseIndex, mode).isBeyondChance()
                || effect(high, caseIndex, mode).isBeyondChance();
    }

    /**
     * Returns whether this key's change, as large as its intervals allow, reaches what another's leave at least: intervals that
     * hold together, so that of 100 tornados 95 have the key that truly matters most among those that may.
     */
    public boolean mayMatterAsMuchAs(TornadoBar other, int caseIndex, int mode) {
        return changes(caseIndex, mode).mapToDouble(TornadoBar::most).max().orElseThrow()
                > other.changes(caseIndex, mode)
                        .mapToDouble(TornadoBar::least)
                        .max()
                        .orElseThrow();
    }

    private Stream<Estimate> changes(int caseIndex, int mode) {
        return Stream.of(low, high).map(end -> effect(end, caseIndex, mode).sureChangeSeconds());
    }

    private static double most(Estimate change) {
        return Math.max(Math.abs(change.low()), Math.abs(change.high()));
    }

    private static double least(Estimate change) {
        return change.low() <= 0 && change.high() >= 0 ? 0 : Math.min(Math.abs(change.low()), Math.abs(change.high()));
    }

    private static PairedEffect effect(VariationPoint point, int caseIndex, int mode) {
        return point.cases().get(caseIndex).modes().get(mode).effect();
    }
}
