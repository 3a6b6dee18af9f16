package org.ionohaul.study;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;

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

    /** Returns the directions that occur, uploads first. */
    public List<Direction> directions() {
        return cases.stream().map(CaseTrials::direction).distinct().sorted().toList();
    }

    /** Returns the result of trials whose rows come in the order that {@link TrialSource#run} states. */
    static StudyResult of(Scenario scenario, int trialsAsked, List<List<TrialRow>> rowsByTrial) {
        List<CaseTrials> cases = new ArrayList<>();
        for (Transfer transfer : scenario.transfers()) {
            for (Direction direction : transfer.directions()) {
                int firstColumn = cases.size() * scenario.modes().size();
                cases.add(new CaseTrials(transfer, direction, modes(scenario.modes(), rowsByTrial, firstColumn)));
            }
        }
        return new StudyResult(scenario, cases, trialsAsked, rowsByTrial.size());
    }

    /** Returns the rows of each trial, in the order that {@link TrialSource#run} states. */
    List<List<TrialRow>> rowsByTrial() {
        List<ModeTrials> columns =
                cases.stream().flatMap(it -> it.modes().stream()).toList();
        return IntStream.range(0, trialsDone)
                .mapToObj(trial ->
                        columns.stream().map(column -> column.rows().get(trial)).toList())
                .toList();
    }

    private static List<ModeTrials> modes(List<Mode> modes, List<List<TrialRow>> rowsByTrial, int firstColumn) {
        return IntStream.range(0, modes.size())
                .mapToObj(i -> new ModeTrials(modes.get(i), column(rowsByTrial, firstColumn + i)))
                .toList();
    }

    private static List<TrialRow> column(List<List<TrialRow>> rowsByTrial, int index) {
        return rowsByTrial.stream().map(rows -> rows.get(index)).toList();
    }
}
