package org.ionohaul.study;

import java.util.List;
import java.util.function.BooleanSupplier;
import org.ionohaul.scenario.Scenario;

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
        List<List<TrialRow>> rowsByTrial =
                new ParallelTrials(source, 0, scenario.trials(), progress, isCancelled).run(threads);
        return StudyResult.of(scenario, rowsByTrial);
    }
}
