package org.ionohaul.placing;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.ionohaul.channel.End;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.Draws;
import org.ionohaul.scenario.Levels;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.scenario.Understood;
import org.ionohaul.trial.Trials;
import org.ionohaul.trial.UncertainDraws;

/**
 * Simulates logged runs, each as it was: its mode, direction and size, at its time on the scenario's clock, at the level that was
 * read during it where there is one.
 *
 * <p>Trial 7 draws the scenario's uncertain inputs alike for all runs, since they are the same stations; its fading, noise and
 * visitors are each run's own.
 */
public final class RunBench {
    private static final double DAY_SECONDS = 86_400;
    /** Every uncertain input in its middle. */
    static final Draws MIDDLE = key -> 0.5;

    private static final double LONGEST_LOGGED_FACTOR = 1.5;

    private final Scenario scenario;
    private final double sendClockSeconds;
    private final Trials trials;
    private final Map<String, Mode> modes;

    /**
     * Prepares the bench.
     *
     * @param understood the scenario
     * @param runs the runs that will be asked for; they are watched longer than the longest of them lasted
     */
    public RunBench(Understood understood, List<LoggedRun> runs) {
        Scenario asked = understood.scenario();
        double longestSeconds = runs.stream()
                .flatMap(it -> it.sessionTime().or(it::deliveredAfter).stream())
                .mapToDouble(it -> LONGEST_LOGGED_FACTOR * it.highSeconds())
                .max()
                .orElse(0);
        this.scenario = asked.sending(
                asked.transfers(), Math.min(DAY_SECONDS, Math.max(asked.horizonSeconds(), longestSeconds)));
        this.sendClockSeconds = understood.sendClockSeconds();
        this.trials = new Trials(scenario);
        this.modes = scenario.modes().stream().collect(Collectors.toMap(Mode::name, Function.identity()));
    }

    /** Returns one trial of a run; may be called from several threads. */
    SimulatedRun simulated(LoggedRun run, int trial) {
        // Runs share the draws of inputs, which belong to the trial; the rest is addressed by run and trial.
        TrialStreams own = own(run, trial);
        return simulated(run, conditions(run, trial, own), own);
    }

    /**
     * Simulates a run under conditions of the caller's; may be called from several threads.
     *
     * @param number which simulation of the run it is, zero or more: the chance in it is its own
     */
    public SimulatedRun simulated(LoggedRun run, SkyConditions conditions, long number) {
        return simulated(run, conditions, own(run, number));
    }

    private TrialStreams own(LoggedRun run, long number) {
        return new TrialStreams(scenario.seed(), ((long) run.number() << Integer.SIZE) + number);
    }

    private SimulatedRun simulated(LoggedRun run, SkyConditions conditions, TrialStreams own) {
        Transfer transfer = new Transfer(
                "run " + run.number(),
                List.of(new PayloadFile("file", run.sentBytes())),
                List.of(run.direction()),
                List.of());
        Mode mode = Optional.ofNullable(modes.get(run.mode())).orElseThrow();
        return SimulatedRun.of(
                trials.run(transfer, run.direction(), mode, conditions, own), new Slowness(run).watchedSeconds());
    }

    private SkyConditions conditions(LoggedRun run, int trial, TrialStreams own) {
        SkyConditions stated = scenario.sky().conditions(draws(trial)).startingAfter(startsAfter(run));
        return asRead(End.FAR, run, trial, own, asRead(End.NEAR, run, trial, own, stated));
    }

    private SkyConditions asRead(End end, LoggedRun run, int trial, TrialStreams own, SkyConditions stated) {
        return read(run, end, stated, draws(trial))
                .map(read -> stated.withSnrAtStart(end, read.snrDb() + read.deviationDb() * normal(own, end)))
                .orElse(stated);
    }

    private Optional<ReadLevel> read(LoggedRun run, End end, SkyConditions stated, Draws draws) {
        Optional<Levels> levels = scenario.sky().levels(end, draws);
        ReadLevel.Rises rises = new ReadLevel.Rises(
                stated.changeDb(end).levelDb(0), stated.at(end).noiseRiseDb().levelDb(0));
        return ReadLevel.of(run.at(end), levels, rises);
    }

    /** Returns what was read at an end during a run, at the middle of the scenario's inputs; empty if nothing can be used. */
    Optional<ReadLevel> read(LoggedRun run, End end) {
        return read(run, end, conditions(run, MIDDLE), MIDDLE);
    }

    private static double normal(TrialStreams own, End end) {
        return ZigguratSampler.NormalizedGaussian.of(own.open(Purpose.METER_READING, ReadLevel.element(end)))
                .sample();
    }

    /** Returns what was read during a run that the scenario says something of. */
    public List<Gauge> gauges(LoggedRun run) {
        return Stream.of(End.values())
                .flatMap(end ->
                        Gauge.of(run, end, scenario.sky().levels(end, MIDDLE).isPresent()).stream())
                .toList();
    }

    /** Returns what a meter without an error would show, in its unit, if uncertain inputs are as drawn. */
    public double expected(Gauge gauge, Draws draws) {
        SkyConditions conditions = conditions(gauge.run(), draws);
        if (gauge.what() == Gauge.What.SNR) {
            return conditions.snrAtStartDb(gauge.end());
        }
        Levels levels = scenario.sky().levels(gauge.end(), draws).orElseThrow();
        return gauge.what() == Gauge.What.SIGNAL
                ? levels.signalDbm() + conditions.changeDb(gauge.end()).levelDb(0)
                : levels.noiseDbm() + conditions.at(gauge.end()).noiseRiseDb().levelDb(0);
    }

    /** Returns what uncertain inputs are in a trial. */
    Draws draws(int trial) {
        return UncertainDraws.of(scenario.seed(), trial);
    }

    /** Returns the conditions when a run begins, as stated: at its time on the scenario's clock. */
    public SkyConditions conditions(LoggedRun run, Draws draws) {
        return scenario.sky().conditions(draws).startingAfter(startsAfter(run));
    }

    /** A time of day is the one nearest to the scenario's clock. */
    private double startsAfter(LoggedRun run) {
        return run.start()
                .map(LocalTime::toSecondOfDay)
                .map(it -> Math.IEEEremainder(it - sendClockSeconds, DAY_SECONDS))
                .orElse(0.0);
    }
}
