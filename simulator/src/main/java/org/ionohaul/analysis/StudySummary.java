package org.ionohaul.analysis;

import java.util.List;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.StudyResult;

/**
 * What a study comes to.
 *
 * @param cases one summary a case, in the scenario's order
 */
public record StudySummary(List<CaseSummary> cases) {
    /** Copies the list. */
    public StudySummary {
        cases = List.copyOf(cases);
    }

    /** Summarises a study in which at least one trial was done. */
    public static StudySummary of(StudyResult result) {
        return of(result, 1 - Estimate.CONFIDENCE);
    }

    /**
     * Summarises a study that is one of several.
     *
     * @param errorRate chance that is accepted that a mode is named alone in a case that is not the best there
     */
    static StudySummary of(StudyResult result, double errorRate) {
        return new StudySummary(
                result.cases().stream().map(it -> CaseSummary.of(it, errorRate)).toList());
    }
}
