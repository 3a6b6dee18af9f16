package org.ionohaul.study;

import java.util.List;
import org.ionohaul.scenario.Scenario;

/**
 * Everything a study found.
 *
 * @param scenario what was simulated
 * @param cases one entry for each transfer and direction, in the scenario's order
 * @param trialsAsked how many trials were asked for
 * @param trialsDone how many were done: fewer when the study was interrupted
 */
public record StudyResult(Scenario scenario, List<CaseTrials> cases, int trialsAsked, int trialsDone) {
    /** Copies the list. */
    public StudyResult {
        cases = List.copyOf(cases);
    }

    /** Returns whether the study was interrupted before all trials were done. */
    public boolean isPartial() {
        return trialsDone < trialsAsked;
    }
}
