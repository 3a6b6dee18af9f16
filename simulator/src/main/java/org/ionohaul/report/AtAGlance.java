package org.ionohaul.report;

import java.util.List;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.study.StudyResult;

/**
 * What is seen first of a study, for whoever shows it while its trials come in.
 *
 * @param answers the answer grid
 * @param sentences a sentence a case
 */
public record AtAGlance(AnswerTable answers, List<String> sentences) {
    /** Copies the list. */
    public AtAGlance {
        sentences = List.copyOf(sentences);
    }

    /**
     * Returns what is seen first of a study.
     *
     * @param result the study, with at least one trial done
     * @param summary what its trials come to
     */
    public static AtAGlance of(StudyResult result, StudySummary summary) {
        return new AtAGlance(
                AnswerTable.of(result, summary),
                summary.cases().stream()
                        .map(it -> AnswerWords.sentence(result.scenario(), it))
                        .toList());
    }
}
