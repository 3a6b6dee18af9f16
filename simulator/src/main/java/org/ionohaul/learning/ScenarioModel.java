package org.ionohaul.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.ionohaul.channel.End;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.fieldlog.EndReadings;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.fieldlog.Reading;
import org.ionohaul.placing.RunBench;
import org.ionohaul.placing.SimulatedRun;
import org.ionohaul.scenario.Draws;
import org.ionohaul.scenario.Levels;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioText;
import org.ionohaul.scenario.Uncertain;
import org.ionohaul.scenario.Understood;
import org.ionohaul.scenario.WrittenInput;

/**
 * A scenario as what could have made a log: its uncertain inputs are the unknowns, and by how much each mode falls short of
 * its model, if that is asked for. Inputs that change from day to day are unknown on each day by itself.
 */
final class ScenarioModel implements LogModel {
    /** The level of the day, whether it is named or not. */
    private static final String DAY_TO_DAY = "sky.day-to-day";

    /** No reading is more exact than what is written in whole decibels. */
    private static final double LEAST_DEVIATION_DB = 0.5;

    private final Scenario scenario;
    private final RunBench bench;
    private final List<LoggedRun> runs;
    private final List<Unknown> unknowns;
    private final List<Optional<WrittenInput>> inputs;
    private final List<Gauge> gauges;

    /**
     * Prepares a model.
     *
     * @param text the scenario's text, for the scale of its inputs
     * @param dailyKeys inputs that change from day to day
     * @param gapDb standard deviation of by how much a mode falls short of its model or exceeds it, in dB; 0 if it does not
     */
    ScenarioModel(Understood understood, ScenarioText text, List<LoggedRun> runs, Set<String> dailyKeys, double gapDb) {
        this.scenario = understood.scenario();
        this.bench = new RunBench(understood, runs);
        this.runs = List.copyOf(runs);
        this.unknowns = unknowns(scenario.sky().uncertainKeys(), runs, dailyKeys, gapDb > 0);
        this.inputs = unknowns.stream()
                .map(it -> it.isGap() ? Optional.of(gapOf(gapDb)) : text.input(it.key()))
                .toList();
        this.gauges = runs.stream().flatMap(run -> gauges(run).stream()).toList();
    }

    private static WrittenInput gapOf(double gapDb) {
        return new WrittenInput(new Uncertain.Normal(0, gapDb), "dB", "dB");
    }

    private static List<Unknown> unknowns(
            List<String> keys, List<LoggedRun> runs, Set<String> dailyKeys, boolean hasGaps) {
        List<Unknown> unknowns = new ArrayList<>();
        for (String key : keys) {
            if (dailyKeys.contains(key) || key.equals(DAY_TO_DAY)) {
                runs.stream()
                        .map(Unknown.Day::of)
                        .distinct()
                        .forEach(day -> unknowns.add(new Unknown(key, false, Optional.of(day))));
            } else {
                unknowns.add(new Unknown(key, false, Optional.empty()));
            }
        }
        if (hasGaps) {
            runs.stream()
                    .map(LoggedRun::mode)
                    .distinct()
                    .sorted()
                    .forEach(mode -> unknowns.add(new Unknown(mode, true, Optional.empty())));
        }
        return List.copyOf(unknowns);
    }

    /** Returns what the log may tell. */
    List<Unknown> list() {
        return unknowns;
    }

    /** Returns an unknown in the numbers that its scenario is written in, where it is written so. */
    Optional<WrittenInput> input(int unknown) {
        return inputs.get(unknown);
    }

    @Override
    public List<LoggedRun> runs() {
        return runs;
    }

    @Override
    public int unknowns() {
        return unknowns.size();
    }

    @Override
    public int[] unknownsOf(int run) {
        return IntStream.range(0, unknowns.size())
                .filter(it -> unknowns.get(it).mattersTo(runs.get(run)))
                .toArray();
    }

    @Override
    public double straightened(int unknown, double score) {
        Optional<WrittenInput> input = inputs.get(unknown);
        if (input.isEmpty()) {
            return score;
        }
        double middle = input.get().quantile(0.5);
        double width = (input.get().quantile(0.9) - input.get().quantile(0.1)) / 2.56;
        return width > 0 ? (input.get().quantile(Scores.probability(score)) - middle) / width : score;
    }

    @Override
    public SimulatedRun simulated(int run, double[] scores, long number) {
        LoggedRun logged = runs.get(run);
        return bench.simulated(
                logged,
                bench.conditions(logged, draws(logged, scores)).raisedBy(-gapDb(logged.mode(), scores)),
                number);
    }

    private Draws draws(LoggedRun run, double[] scores) {
        return key -> IntStream.range(0, unknowns.size())
                .filter(it -> !unknowns.get(it).isGap())
                .filter(it ->
                        unknowns.get(it).key().equals(key) && unknowns.get(it).mattersTo(run))
                .mapToDouble(it -> Scores.probability(scores[it]))
                .findFirst()
                .orElseThrow();
    }

    /** Returns by how much a mode falls short of its model, in dB. */
    double gapDb(String mode, double[] scores) {
        return IntStream.range(0, unknowns.size())
                .filter(it -> unknowns.get(it).isGap() && unknowns.get(it).key().equals(mode))
                .mapToDouble(it -> inputs.get(it).orElseThrow().quantile(Scores.probability(scores[it])))
                .findFirst()
                .orElse(0);
    }

    /** Returns the draws of another day: what was learned of the inputs that stay, and other draws for those that change. */
    Draws later(double[] scores, Draws others) {
        return key -> IntStream.range(0, unknowns.size())
                .filter(it -> !unknowns.get(it).isGap())
                .filter(it -> unknowns.get(it).key().equals(key)
                        && unknowns.get(it).day().isEmpty())
                .mapToDouble(it -> Scores.probability(scores[it]))
                .findFirst()
                .orElseGet(() -> others.probability(key));
    }

    @Override
    public List<MeterReading> readings() {
        return gauges.stream().map(Gauge::reading).toList();
    }

    @Override
    public double[] expectedReadings(double[] scores) {
        return gauges.stream().mapToDouble(it -> expected(it, scores)).toArray();
    }

    private double expected(Gauge gauge, double[] scores) {
        Draws draws = draws(gauge.run(), scores);
        SkyConditions conditions = bench.conditions(gauge.run(), draws);
        if (gauge.what() == What.SNR) {
            return conditions.snrAtStartDb(gauge.end());
        }
        Levels levels = scenario.sky().levels(gauge.end(), draws).orElseThrow();
        return gauge.what() == What.SIGNAL
                ? levels.signalDbm() + conditions.changeDb(gauge.end()).levelDb(0)
                : levels.noiseDbm() + conditions.at(gauge.end()).noiseRiseDb().levelDb(0);
    }

    private List<Gauge> gauges(LoggedRun run) {
        List<Gauge> found = new ArrayList<>();
        for (End end : End.values()) {
            EndReadings read = run.at(end);
            boolean hasLevels = scenario.sky().levels(end, key -> 0.5).isPresent();
            read.snr().ifPresent(it -> found.add(gauge(run, end, What.SNR, it.mean(), it.deviationDb())));
            if (hasLevels) {
                read.signal().ifPresent(it -> found.add(gauge(run, end, What.SIGNAL, it.mean(), it.deviationDb())));
                read.noise().ifPresent(it -> found.add(gauge(run, end, What.NOISE, it.mean(), it.deviationDb())));
            } else if (read.signal().isPresent() && read.noise().isPresent()) {
                Reading signal = read.signal().get();
                Reading noise = read.noise().get();
                found.add(gauge(
                        run,
                        end,
                        What.SNR,
                        signal.mean() - noise.mean(),
                        Math.hypot(signal.deviationDb(), noise.deviationDb())));
            }
        }
        return found;
    }

    private static Gauge gauge(LoggedRun run, End end, What what, double value, double deviationDb) {
        return new Gauge(run, end, what, new MeterReading(value, Math.max(LEAST_DEVIATION_DB, deviationDb)));
    }

    private enum What {
        SNR,
        SIGNAL,
        NOISE
    }

    private record Gauge(LoggedRun run, End end, What what, MeterReading reading) {}
}
