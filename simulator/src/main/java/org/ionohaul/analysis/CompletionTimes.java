package org.ionohaul.analysis;

import java.util.List;
import org.ionohaul.statistics.PairedTimes;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.ModeTrials;
import org.ionohaul.study.StudyResult;

/**
 * When each trial of a study delivered, by case and mode: all that is kept of the study that others are compared with.
 *
 * @param cases one entry a case, in the scenario's order
 */
record CompletionTimes(List<OfCase> cases) {
    /** Those of no study. */
    static final CompletionTimes NONE = new CompletionTimes(List.of());

    /**
     * The times of one case.
     *
     * @param deadlinesSeconds its deadlines
     * @param seconds an entry a mode, each with the completion time of every trial, infinite if it never came
     */
    record OfCase(List<Double> deadlinesSeconds, List<double[]> seconds) {
        OfCase {
            deadlinesSeconds = List.copyOf(deadlinesSeconds);
            seconds = List.copyOf(seconds);
        }
    }

    CompletionTimes {
        cases = List.copyOf(cases);
    }

    static CompletionTimes of(StudyResult result) {
        return new CompletionTimes(result.cases().stream()
                .map(it -> new OfCase(
                        it.transfer().deadlinesSeconds(),
                        it.modes().stream().map(ModeTrials::completionSeconds).toList()))
                .toList());
    }

    /**
     * Returns what another study of the same cases, modes, seed and number of trials changed against this one.
     *
     * @param errorRate chance that is accepted that any change is told that is none
     */
    PairedEffect effectOf(StudyResult after, int caseIndex, int mode, double errorRate) {
        OfCase before = cases.get(caseIndex);
        CaseTrials trials = after.cases().get(caseIndex);
        return PairedEffect.of(
                PairedTimes.of(
                        before.seconds().get(mode), trials.modes().get(mode).completionSeconds()),
                before.deadlinesSeconds(),
                trials.transfer().deadlinesSeconds(),
                errorRate);
    }
}
