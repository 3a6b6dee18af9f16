package org.ionohaul.placing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.channel.End;
import org.ionohaul.fieldlog.FieldLog;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Understood;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.study.TrialPool;

/**
 * A log laid beside the simulation.
 *
 * @param scenario the model
 * @param log the runs
 * @param trials how often each run was simulated
 * @param runs where each run lies, in the log's order
 * @param usual where such runs lie, in order from the quickest for its kind, if the model is right
 * @param check what they say together
 * @param ends what was read at the ends, where anything was
 */
public record LogPlacement(
        Scenario scenario,
        FieldLog log,
        int trials,
        List<PlacedRun> runs,
        List<UsualPlace> usual,
        ModelCheck check,
        List<EndCheck> ends) {
    /** Fewer runs than that can hardly show anything together. */
    public static final int FEW_RUNS = 5;

    /** Copies the lists. */
    public LogPlacement {
        runs = List.copyOf(runs);
        usual = List.copyOf(usual);
        ends = List.copyOf(ends);
    }

    /**
     * Simulates the runs of a log, each as often as the scenario has trials, and lays the log beside them.
     *
     * @param pool runs the trials; if it is cancelled, the log lies beside those that are done
     * @return empty if none is
     */
    public static Optional<LogPlacement> of(Understood understood, FieldLog log, TrialPool pool) {
        RunBench bench = new RunBench(understood, log.runs());
        List<List<SimulatedRun>> trials = pool.run(
                understood.scenario().trials(),
                trial -> log.runs().stream()
                        .map(run -> bench.simulated(run, trial))
                        .toList());
        return trials.isEmpty() ? Optional.empty() : Optional.of(of(understood.scenario(), log, bench, trials));
    }

    private static LogPlacement of(Scenario scenario, FieldLog log, RunBench bench, List<List<SimulatedRun>> trials) {
        List<List<SimulatedRun>> simulated = IntStream.range(0, log.runs().size())
                .mapToObj(run -> trials.stream().map(it -> it.get(run)).toList())
                .toList();
        List<PlacedRun> placed = new ArrayList<>();
        for (int i = 0; i < simulated.size(); i++) {
            LoggedRun run = log.runs().get(i);
            boolean isRead =
                    Stream.of(End.values()).anyMatch(end -> bench.read(run, end).isPresent());
            placed.add(placed(run, simulated.get(i), isRead));
        }
        return new LogPlacement(
                scenario,
                log,
                trials.size(),
                placed,
                UsualPlace.of(asLogged(log.runs(), simulated)),
                check(log.runs(), simulated),
                EndCheck.of(
                        bench,
                        log.runs().stream()
                                .flatMap(it -> bench.gauges(it).stream())
                                .toList(),
                        trials.size()));
    }

    /**
     * Checks what logged runs say together.
     *
     * @param simulated trials of each run, as many of each
     */
    static ModelCheck check(List<LoggedRun> runs, List<List<SimulatedRun>> simulated) {
        List<RankSpan> logged = IntStream.range(0, runs.size())
                .mapToObj(run -> RunScale.of(runs.get(run), simulated.get(run)).logged())
                .toList();
        return ModelCheck.of(logged, asLogged(runs, simulated));
    }

    /** Returns for each run where each of its trials lies as if the same person had logged it. */
    static List<List<RankSpan>> asLogged(List<LoggedRun> runs, List<List<SimulatedRun>> simulated) {
        List<List<RankSpan>> asLogged = new ArrayList<>();
        for (int run = 0; run < runs.size(); run++) {
            RunScale scale = RunScale.of(runs.get(run), simulated.get(run));
            asLogged.add(simulated.get(run).stream().map(scale::noted).toList());
        }
        return asLogged;
    }

    /** Returns whether fewer trials were done than the scenario asks for. */
    public boolean isPartial() {
        return trials < scenario.trials();
    }

    private static PlacedRun placed(LoggedRun run, List<SimulatedRun> simulated, boolean isRead) {
        Slowness scale = new Slowness(run);
        OrderedSample times = OrderedSample.of(simulated.stream()
                .mapToDouble(it -> Double.isInfinite(it.deliveredSeconds())
                        ? Double.POSITIVE_INFINITY
                        : scale.isSessionTimed() ? it.endedSeconds() : it.deliveredSeconds())
                .toArray());
        return new PlacedRun(run, RunScale.of(run, simulated).logged(), times, scale.isSessionTimed(), isRead);
    }
}
