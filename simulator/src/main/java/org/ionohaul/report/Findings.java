package org.ionohaul.report;

import java.util.List;
import org.ionohaul.analysis.SizeAnswers;
import org.ionohaul.analysis.SkyAnswers;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.sheet.SkyView;
import org.ionohaul.study.StudyResult;

/**
 * Everything that is to be reported of a study.
 *
 * @param result its trials, at least one
 * @param summary what they come to
 * @param sizes answers for files of every size, one entry a direction; empty if they were not asked for
 * @param sizesArePartial whether the trials behind those answers were interrupted
 * @param skies what its skies were, and on which of them its modes differ most
 * @param sky one of its trials' skies
 * @param provenance where it all comes from
 */
public record Findings(
        StudyResult result,
        StudySummary summary,
        List<SizeAnswers> sizes,
        boolean sizesArePartial,
        SkyAnswers skies,
        SkyView sky,
        Provenance provenance) {
    /** Copies the list. */
    public Findings {
        sizes = List.copyOf(sizes);
    }

    /** Returns whether anything was interrupted before it was complete. */
    public boolean isPartial() {
        return result.isPartial() || sizesArePartial;
    }
}
