package org.ionohaul.study;

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
     * whichever way; infinite if in the median evening it decides whether the mode delivers at all.
     */
    public double swingSeconds(int caseIndex, int mode) {
        return Math.max(change(low, caseIndex, mode), change(high, caseIndex, mode));
    }

    private static double change(VariationPoint point, int caseIndex, int mode) {
        return Math.abs(point.cases()
                .get(caseIndex)
                .modes()
                .get(mode)
                .effect()
                .medianChangeSeconds()
                .value());
    }
}
