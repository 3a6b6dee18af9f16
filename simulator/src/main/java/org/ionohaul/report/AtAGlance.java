package org.ionohaul.report;

import java.util.List;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.rendering.ModeOrder;
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
     * @param order the colours of its modes
     */
    public static AtAGlance of(StudyResult result, StudySummary summary, ModeOrder order) {
        return new AtAGlance(
                AnswerTable.of(result, summary, order),
                summary.cases().stream()
                        .map(it -> AnswerWords.sentence(result.scenario(), it))
                        .toList());
    }
}
