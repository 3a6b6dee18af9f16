package org.ionohaul.analysis;

import java.util.List;
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
        return new StudySummary(result.cases().stream().map(CaseSummary::of).toList());
    }
}
