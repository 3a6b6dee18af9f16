package org.ionohaul.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.placing.Gauge;
import org.ionohaul.placing.RunBench;
import org.ionohaul.placing.SimulatedRun;
import org.ionohaul.scenario.Draws;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioText;
import org.ionohaul.scenario.Uncertain;
import org.ionohaul.scenario.Understood;
import org.ionohaul.scenario.WrittenInput;

/**
 * A scenario as what could have made a log: its uncertain inputs are the unknowns, and by how much each mode falls short of
 * its model, if that is asked for. Inputs that change from day to day are unknown on each day by itself.
 */
public final class ScenarioModel implements LogModel {
    /** The level of the day, whether it is named or not. */
    private static final String DAY_TO_DAY = "sky.day-to-day";

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
    public ScenarioModel(
            Understood understood, ScenarioText text, List<LoggedRun> runs, Set<String> dailyKeys, double gapDb) {
        this(
                understood,
                text,
                runs,
                dailyKeys,
                gapDb,
                runs.stream().map(LoggedRun::mode).toList());
    }

    /**
     * Prepares a model in which other modes than those that were run may fall short as well.
     *
     * @param gapModes the names of all that may
     */
    public ScenarioModel(
            Understood understood,
            ScenarioText text,
            List<LoggedRun> runs,
            Set<String> dailyKeys,
            double gapDb,
            List<String> gapModes) {
        this.scenario = understood.scenario();
        this.bench = new RunBench(understood, runs);
        this.runs = List.copyOf(runs);
        this.unknowns = unknowns(scenario.sky().uncertainKeys(), runs, dailyKeys, gapDb > 0 ? gapModes : List.of());
        this.inputs = unknowns.stream()
                .map(it -> it.isGap() ? Optional.of(gapOf(gapDb)) : text.input(it.key()))
                .toList();
        this.gauges = runs.stream().flatMap(run -> bench.gauges(run).stream()).toList();
    }

    private static WrittenInput gapOf(double gapDb) {
        return new WrittenInput(new Uncertain.Normal(0, gapDb), "dB", "dB");
    }

    private static List<Unknown> unknowns(
            List<String> keys, List<LoggedRun> runs, Set<String> dailyKeys, List<String> gapModes) {
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
        gapModes.stream().distinct().sorted().forEach(mode -> unknowns.add(new Unknown(mode, true, Optional.empty())));
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
        double width = Math.abs(input.get().quantile(0.9) - input.get().quantile(0.1)) / 2.56;
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
    public double gapDb(String mode, double[] scores) {
        return IntStream.range(0, unknowns.size())
                .filter(it -> unknowns.get(it).isGap() && unknowns.get(it).key().equals(mode))
                .mapToDouble(it -> inputs.get(it).orElseThrow().quantile(Scores.probability(scores[it])))
                .findFirst()
                .orElse(0);
    }

    /** Returns the draws of another day: what was learned of the inputs that stay, and other draws for those that change. */
    public Draws later(double[] scores, Draws others) {
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
        return gauges.stream()
                .map(it -> new MeterReading(it.value(), it.deviationDb()))
                .toList();
    }

    @Override
    public double[] expectedReadings(double[] scores) {
        return gauges.stream()
                .mapToDouble(it -> bench.expected(it, draws(it.run(), scores)))
                .toArray();
    }
}
