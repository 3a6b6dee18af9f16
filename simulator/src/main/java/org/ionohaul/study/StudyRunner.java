package org.ionohaul.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.statistics.OrderedSample;

/**
 * Runs a study: all trials of a scenario, on several threads.
 *
 * <p>The result depends on the scenario and its trials alone, whatever the number of threads. A study that is cancelled
 * comes to exactly what the study of so many trials would have.
 *
 * @param scenario what to simulate
 * @param source runs one trial of it
 * @param threads how many threads to use, 1 or more
 * @param progress hears how far it is
 * @param isCancelled asked before each trial whether to stop
 */
public record StudyRunner(
        Scenario scenario, TrialSource source, int threads, StudyProgress progress, BooleanSupplier isCancelled) {
    /** Checks the number of threads. */
    public StudyRunner {
        if (threads < 1) {
            throw new IllegalArgumentException("threads must be at least 1: " + threads);
        }
    }

    /**
     * Runs the scenario's trials.
     *
     * @throws IllegalStateException if a trial fails; the message names it
     */
    public StudyResult run() {
        return resume(StudyResult.of(scenario, scenario.trials(), List.of()));
    }

    /**
     * Runs the trials that an interrupted study still lacks.
     *
     * @param interrupted what was done of the same scenario
     * @throws IllegalStateException if a trial fails; the message names it
     */
    public StudyResult resume(StudyResult interrupted) {
        List<List<TrialRow>> rows = new ArrayList<>(interrupted.rowsByTrial());
        rows.addAll(trials(rows.size(), scenario.trials()));
        return StudyResult.of(scenario, scenario.trials(), rows);
    }

    /**
     * Runs trials until the goal is reached for every mode in every case; the scenario's number of trials is not
     * looked at.
     *
     * @param goal how exact the answers must be
     * @param mostTrials where to stop in any case, 1 or more
     * @throws IllegalStateException if a trial fails; the message names it
     */
    public StudyResult runUntil(PrecisionGoal goal, int mostTrials) {
        List<List<TrialRow>> rows = new ArrayList<>();
        int asked = SampleSizes.stopAt(
                size -> {
                    rows.addAll(trials(rows.size(), size));
                    return rows.size() < size || isReached(goal, StudyResult.of(scenario, size, rows));
                },
                mostTrials);
        return StudyResult.of(scenario, asked, rows);
    }

    private List<List<TrialRow>> trials(int from, int to) {
        return new ParallelTrials(source, from, to, progress, isCancelled).run(threads);
    }

    private static boolean isReached(PrecisionGoal goal, StudyResult result) {
        return result.cases().stream()
                .allMatch(trials -> trials.modes().stream()
                        .allMatch(
                                mode -> goal.isReached(trials.transfer(), OrderedSample.of(mode.completionSeconds()))));
    }
}
