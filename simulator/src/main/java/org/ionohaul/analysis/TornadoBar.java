package org.ionohaul.analysis;

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
        return Math.abs(largest(caseIndex, mode).value());
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

    /**
     * Returns whether either end changes a mode's time beyond chance.
     *
     * @param choices how many effects were looked at
     */
    boolean isTold(int caseIndex, int mode, int choices) {
        return effect(low, caseIndex, mode).told(choices).isOfTime()
                || effect(high, caseIndex, mode).told(choices).isOfTime();
    }

    /** Returns whether this key's change, as large as its interval allows, reaches what another's leaves at least. */
    public boolean mayMatterAsMuchAs(TornadoBar other, int caseIndex, int mode) {
        Estimate own = largest(caseIndex, mode);
        Estimate others = other.largest(caseIndex, mode);
        double least =
                others.low() <= 0 && others.high() >= 0 ? 0 : Math.min(Math.abs(others.low()), Math.abs(others.high()));
        return Math.max(Math.abs(own.low()), Math.abs(own.high())) > least;
    }

    /** Returns the change at the end where it is larger. */
    private Estimate largest(int caseIndex, int mode) {
        Estimate atLow = effect(low, caseIndex, mode).medianChangeSeconds();
        Estimate atHigh = effect(high, caseIndex, mode).medianChangeSeconds();
        return Math.abs(atLow.value()) >= Math.abs(atHigh.value()) ? atLow : atHigh;
    }

    private static PairedEffect effect(VariationPoint point, int caseIndex, int mode) {
        return point.cases().get(caseIndex).modes().get(mode).effect();
    }
}
