package org.ionohaul.study;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A study with some keys set to values of their own.
 *
 * @param values the values, one a key that is varied
 * @param cases what it comes to, in the scenario's order
 * @param effects for each case and mode, what changed against the reference
 */
public record VariationPoint(List<String> values, List<CaseSummary> cases, List<List<PairedEffect>> effects) {
    /** Copies the lists. */
    public VariationPoint {
        values = List.copyOf(values);
        cases = List.copyOf(cases);
        effects = effects.stream().map(List::copyOf).toList();
    }

    /**
     * Returns the point that a study comes to.
     *
     * @param values the values it was run with
     * @param result the study, with at least one trial done
     * @param reference the study it is compared with, trial by trial: same cases, modes, seed and number of trials
     */
    public static VariationPoint of(List<String> values, StudyResult result, StudyResult reference) {
        return new VariationPoint(
                values,
                StudySummary.of(result).cases(),
                IntStream.range(0, result.cases().size())
                        .mapToObj(i ->
                                effects(reference.cases().get(i), result.cases().get(i)))
                        .toList());
    }

    private static List<PairedEffect> effects(CaseTrials before, CaseTrials after) {
        return IntStream.range(0, after.modes().size())
                .mapToObj(i ->
                        PairedEffect.of(before.modes().get(i), after.modes().get(i)))
                .toList();
    }
}
