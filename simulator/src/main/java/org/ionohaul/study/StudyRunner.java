package org.ionohaul.study;

import java.util.List;
import java.util.function.BooleanSupplier;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.trial.Trials;

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

    /** Returns a runner that uses all processors, tells nothing and is never cancelled. */
    public static StudyRunner of(Scenario scenario) {
        return new StudyRunner(
                scenario,
                new Trials(scenario)::run,
                Runtime.getRuntime().availableProcessors(),
                (done, asked) -> {},
                () -> false);
    }

    /**
     * Runs the scenario's trials.
     *
     * @throws IllegalStateException if a trial fails; the message names it
     * @throws NoRoomForTrials if there is no room for so many rows
     */
    public StudyResult run() {
        return run(RowStore.nameless());
    }

    /**
     * Runs the trials that a store still lacks.
     *
     * @param rows what was done of the same scenario, perhaps nothing; what is run is added
     * @throws IllegalStateException if a trial fails; the message names it
     * @throws NoRoomForTrials if there is no room for so many rows
     */
    public StudyResult run(RowStore rows) {
        extend(rows, scenario.trials());
        return StudyResult.of(scenario, scenario.trials(), rows);
    }

    /**
     * Runs trials until the goal is reached for every mode in every case; the scenario's number of trials is not
     * looked at.
     *
     * @param rows what was done of the same scenario, perhaps nothing; what is run is added
     * @param goal how exact the answers must be
     * @param mostTrials where to stop in any case, 1 or more
     * @throws IllegalStateException if a trial fails; the message names it
     * @throws NoRoomForTrials if there is no room for so many rows
     */
    public StudyResult runUntil(RowStore rows, PrecisionGoal goal, int mostTrials) {
        int asked = SampleSizes.stopAt(
                size -> {
                    extend(rows, size);
                    return rows.trials() < size || goal.isReachedBy(StudyResult.of(scenario, size, rows));
                },
                mostTrials);
        return StudyResult.of(scenario, asked, rows);
    }

    /** Runs trials until there are so many, if there are not already, or the study is cancelled. */
    private void extend(RowStore rows, int trials) {
        if (rows.trials() < trials) {
            new ParallelTrials<>(this::rows, rows, trials, trials, progress, isCancelled).run(threads);
        }
    }

    private List<byte[]> rows(int trial) {
        return source.run(trial).stream().map(it -> TrialRow.packed(trial, it)).toList();
    }
}
