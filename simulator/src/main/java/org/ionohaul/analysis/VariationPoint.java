package org.ionohaul.analysis;

import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.StudyResult;

/**
 * What a study comes to with some keys set to values of their own; small, whatever the number of trials.
 *
 * @param values the values, one a key that is varied
 * @param cases what it comes to, one entry for each transfer and direction, in the scenario's order
 */
public record VariationPoint(List<String> values, List<CasePoint> cases) {
    /** Copies the lists. */
    public VariationPoint {
        values = List.copyOf(values);
        cases = List.copyOf(cases);
    }

    /**
     * Returns the point that a study comes to.
     *
     * @param result the study, with at least one trial done
     * @param reference the study it is compared with, trial by trial: same cases, modes, seed and number of trials
     * @param points how many points there will be: what is claimed of a case at any of them is made to be right in 95 of 100
     *     variations, best modes and changes each
     */
    static VariationPoint of(List<String> values, StudyResult result, CompletionTimes reference, int points) {
        double accepted = 1 - Estimate.CONFIDENCE;
        List<CaseSummary> summaries = StudySummary.of(result, accepted / points).cases();
        int changes = Math.max(1, points - 1) * result.scenario().modes().size();
        return new VariationPoint(
                values,
                IntStream.range(0, summaries.size())
                        .mapToObj(
                                i -> CasePoint.of(summaries.get(i), effects(result, i, reference, accepted / changes)))
                        .toList());
    }

    private static List<PairedEffect> effects(
            StudyResult result, int caseIndex, CompletionTimes reference, double errorRate) {
        return IntStream.range(0, result.scenario().modes().size())
                .mapToObj(mode -> reference.effectOf(result, caseIndex, mode, errorRate))
                .toList();
    }
}
