package org.ionohaul.analysis;

import java.util.List;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Transfer;

/**
 * One row of the {@link AnswerGrid}.
 *
 * @param transfer what is sent
 * @param direction which way
 * @param deadlines an answer a deadline, at least one
 * @param planned the mode to plan with: that which ranks highest, alone or among those that can't be told apart
 * @param plan the time that at least 9 of 10 trials keep with it
 */
public record CaseAnswer(
        Transfer transfer, Direction direction, List<DeadlineAnswer> deadlines, Mode planned, SafeTime plan) {
    /** Copies the list. */
    public CaseAnswer {
        deadlines = List.copyOf(deadlines);
    }

    /** Returns the answer of a case. */
    public static CaseAnswer of(CaseSummary summary) {
        return new CaseAnswer(
                summary.transfer(),
                summary.direction(),
                DeadlineAnswer.all(summary),
                summary.best().mode(),
                summary.best().ninthPlan());
    }
}
