package org.ionohaul.study;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
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

    /**
     * Returns what a study of fewer trials would have come to.
     *
     * @param trials at most as many as were done
     */
    public StudyResult first(int trials) {
        return new StudyResult(
                scenario.tried(trials),
                cases.stream().map(it -> it.first(trials)).toList(),
                trials,
                trials);
    }

    /**
     * Returns this with the cases of another study under the same skies; of both only as many trials as either has.
     *
     * @param other a study of the same stations, sky, seed, modes and number of trials, with other transfers
     */
    public StudyResult with(StudyResult other) {
        int common = Math.min(trialsDone, other.trialsDone);
        return new StudyResult(
                scenario.sending(
                        Stream.of(scenario, other.scenario)
                                .flatMap(it -> it.transfers().stream())
                                .toList(),
                        scenario.horizonSeconds()),
                Stream.of(this, other)
                        .flatMap(it -> it.cases().stream())
                        .map(it -> it.first(common))
                        .toList(),
                trialsAsked,
                common);
    }

    /**
     * Returns the result of the first trials of a store, as many as asked for or as there are.
     *
     * @param rows a trial's rows in the order that {@link TrialSource#run} states
     */
    static StudyResult of(Scenario scenario, int trialsAsked, RowStore rows) {
        int trialsDone = Math.min(trialsAsked, rows.trials());
        List<CaseTrials> cases = new ArrayList<>();
        int column = 0;
        for (Transfer transfer : scenario.transfers()) {
            for (Direction direction : transfer.directions()) {
                List<ModeTrials> modes = new ArrayList<>();
                for (Mode mode : scenario.modes()) {
                    modes.add(new ModeTrials(mode, rows.column(column++, trialsDone)));
                }
                cases.add(new CaseTrials(transfer, direction, modes));
            }
        }
        return new StudyResult(scenario, cases, trialsAsked, trialsDone);
    }
}
