package org.ionohaul.cli;

import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.PrecisionGoal;
import org.ionohaul.study.RowStore;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.StudyRunner;
import org.ionohaul.study.TrialPool;
import org.ionohaul.study.TrialSource;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How much to simulate, and the doing of it. */
final class Simulation {
    private static final int MOST_TRIALS = 100_000;

    /** More only stand in each other's way, up to where the machine has no room for another. */
    private static final int MOST_THREADS = Math.max(256, Runtime.getRuntime().availableProcessors());

    private final Function<Scenario, TrialSource> trialsOf;
    private final Interruption interruption;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--trials",
            paramLabel = "N",
            description = "How many trials to simulate, instead of what the file says. More make the answers sharper:"
                    + " four times as many halve the uncertainty.",
            converter = CountConverter.class)
    private Optional<Integer> trials = Optional.empty();

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "Seed of all chance, instead of what the file says.",
            converter = WholeConverter.class)
    private Optional<Long> seed = Optional.empty();

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "How many threads to use; all processors if not given. Does not change results.",
            converter = CountConverter.class)
    private int threads = Runtime.getRuntime().availableProcessors();

    Simulation(Function<Scenario, TrialSource> trialsOf, Interruption interruption) {
        this.trialsOf = trialsOf;
        this.interruption = interruption;
    }

    /** Returns what the command line says instead of the scenario file, by key. */
    Map<String, String> changes() {
        if (trials.isPresent() && trials.get() < 1) {
            throw new ParameterException(spec.commandLine(), "--trials must be at least 1: " + trials.get());
        }
        requireThreads(threads, spec);
        Map<String, String> changes = new LinkedHashMap<>();
        trials.ifPresent(it -> changes.put("trials", it.toString()));
        seed.ifPresent(it -> changes.put("seed", it.toString()));
        return changes;
    }

    /** Refuses a number of threads that no machine has room for. */
    static void requireThreads(int threads, CommandSpec spec) {
        if (threads < 1 || threads > MOST_THREADS) {
            throw new ParameterException(
                    spec.commandLine(), "--threads must be from 1 to " + MOST_THREADS + ": " + threads);
        }
    }

    /** Returns how many trials the command line asks for. */
    Optional<Integer> trialsAsked() {
        return trials;
    }

    /** Returns what a user types; an interruption ends it. */
    Answers answers(InputStream in) {
        return new Answers(in, interruption);
    }

    /** Waits until an interruption comes. */
    void awaitInterruption() {
        interruption.await();
    }

    /** Returns where a simulation stops that goes on until its answers are exact enough. */
    int mostTrials() {
        return trials.orElse(MOST_TRIALS);
    }

    /** Runs the scenario's trials, as many as are done when an interruption comes. */
    StudyResult run(Scenario scenario, String task) {
        return during(task, scenario, StudyRunner::run);
    }

    /**
     * Runs the trials of the scenario that a store still lacks, as many as are done when an interruption comes.
     *
     * @param rows what was done of it; what is run is added
     */
    StudyResult run(Scenario scenario, RowStore rows, String task) {
        return during(task, scenario, runner -> runner.run(rows));
    }

    /**
     * Runs as many trials as the goal needs, but no more than the command line says or a hundred thousand.
     *
     * @param rows what was done of the same scenario; what is run is added
     */
    StudyResult runUntil(Scenario scenario, RowStore rows, PrecisionGoal goal, String task) {
        return during(task, scenario, runner -> runner.runUntil(rows, goal, mostTrials()));
    }

    /** Does work whose trials are of a kind of its own, as many as are done when an interruption comes. */
    <T> T inPool(String task, int trials, Function<TrialPool, T> work) {
        return TrialProgress.during(
                task, trials, progress -> work.apply(new TrialPool(threads, progress, interruption)));
    }

    private StudyResult during(String task, Scenario scenario, Function<StudyRunner, StudyResult> work) {
        return TrialProgress.during(
                task,
                scenario.trials(),
                progress -> work.apply(
                        new StudyRunner(scenario, trialsOf.apply(scenario), threads, progress, interruption)));
    }
}
