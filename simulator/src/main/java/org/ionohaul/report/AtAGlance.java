package org.ionohaul.report;

import java.util.List;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.Race;
import org.ionohaul.analysis.Rerun;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.rendering.Chart;
import org.ionohaul.study.StudyResult;

/**
 * What is seen first of a study, for whoever shows it while its trials come in.
 *
 * @param answers the answer grid
 * @param sentences a sentence a case
 */
public record AtAGlance(AnswerTable answers, List<String> sentences) {
    /** How much of a trial's sky is shown at most. */
    private static final double LONGEST_SKY_SECONDS = 3600;

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

    /**
     * Returns the picture of the race of a case.
     *
     * @param id a name unique on the page
     * @param result the study, with at least one trial done
     * @param summary what its trials come to
     * @param place of the case among the study's
     * @param rerun where its one trial is run again
     */
    public static Chart race(String id, StudyResult result, StudySummary summary, int place, Rerun rerun) {
        CaseSummary shown = summary.cases().get(place);
        double seconds = Math.min(LONGEST_SKY_SECONDS, result.scenario().horizonSeconds());
        return RaceChart.chart(
                id,
                result.scenario(),
                shown,
                Race.of(result.cases().get(place), shown.ranking().get(0), seconds, rerun));
    }
}
