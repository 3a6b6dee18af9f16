package org.ionohaul.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ionohaul.report.ResultFolder;
import org.ionohaul.report.TornadoText;
import org.ionohaul.report.VariationCsv;
import org.ionohaul.report.VariationText;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.study.KeySweep;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.TornadoBar;
import org.ionohaul.study.Variation;
import org.ionohaul.study.VariationPoint;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Runs a scenario again and again with one or two keys changed. */
@Command(
        name = "vary",
        description = {
            "Simulates a scenario once for each value of one or two keys, under the same skies, and says what the change"
                    + " does to every mode and which mode is best where.",
            "",
            "Give the values as a range: --set near.snr=\"6..18 dB\", or with their number, \"6..18 dB : 5\". Any key of"
                    + " the scenario or, as modes.NAME.KEY, of a mode. Writes vary.csv.",
            ""
        },
        mixinStandardHelpOptions = true)
final class VaryCommand implements Callable<Integer> {
    private static final int MOST_KEYS = 2;

    /** What decides which skies there are; the points compared must agree in these. */
    private static final Set<String> KEYS_OF_CHANCE = Set.of("seed", "trials");

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private final ScenarioChoice choice = new ScenarioChoice();

    @Mixin
    private final Simulation simulation;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "Where to put the folder of results, named after scenario and seed; ${DEFAULT-VALUE} if not given.",
            defaultValue = "results")
    private Path out = Path.of("results");

    @Option(
            names = "--tornado",
            description =
                    "Sets each key alone to either end of its range and ranks the keys by what they change; takes any"
                            + " number of them.")
    private boolean isTornado;

    VaryCommand(Simulation simulation) {
        this.simulation = simulation;
    }

    @Override
    public Integer call() throws ScenarioProblems, NotWritten {
        List<KeySweep> sweeps = sweeps();
        if (isTornado && !sweeps.isEmpty()) {
            return tornado(sweeps);
        }
        if (sweeps.isEmpty() || sweeps.size() > MOST_KEYS) {
            throw new ParameterException(
                    spec.commandLine(), "Give one or two ranges of values, such as --set near.snr=\"6..18 dB\".");
        }
        List<List<String>> combinations = Variation.combinations(sweeps);
        List<Scenario> scenarios = scenarios(sweeps, combinations);
        List<VariationPoint> points = new ArrayList<>();
        Optional<StudyResult> reference = Optional.empty();
        for (int i = 0; i < scenarios.size(); i++) {
            StudyResult result = simulation.run(scenarios.get(i), i + 1 + " of " + scenarios.size());
            if (result.isPartial()) {
                return interrupted();
            }
            reference = reference.or(() -> Optional.of(result));
            points.add(VariationPoint.of(combinations.get(i), result, reference.get()));
        }
        show(new Variation(scenarios.get(0), sweeps, points));
        return ExitCode.DONE;
    }

    private int tornado(List<KeySweep> sweeps) throws ScenarioProblems {
        List<Scenario> scenarios = new ArrayList<>();
        scenarios.add(alone(sweeps, Map.of()));
        for (KeySweep sweep : sweeps) {
            scenarios.add(alone(sweeps, Map.of(sweep.key(), low(sweep))));
            scenarios.add(alone(sweeps, Map.of(sweep.key(), high(sweep))));
        }
        List<StudyResult> results = new ArrayList<>();
        for (Scenario scenario : scenarios) {
            results.add(simulation.run(scenario, results.size() + 1 + " of " + scenarios.size()));
            if (results.get(results.size() - 1).isPartial()) {
                return interrupted();
            }
        }
        List<TornadoBar> bars = IntStream.range(0, sweeps.size())
                .mapToObj(i -> bar(sweeps.get(i), results.get(2 * i + 1), results.get(2 * i + 2), results.get(0)))
                .toList();
        print(new TornadoText(results.get(0), bars).lines());
        return ExitCode.DONE;
    }

    private Scenario alone(List<KeySweep> sweeps, Map<String, String> change) throws ScenarioProblems {
        Map<String, String> changes = new LinkedHashMap<>(simulation.changes());
        changes.putAll(change);
        return choice.read(changes, sweeps.stream().map(KeySweep::key).collect(Collectors.toSet()));
    }

    private static TornadoBar bar(KeySweep sweep, StudyResult low, StudyResult high, StudyResult reference) {
        return new TornadoBar(
                sweep.key(),
                VariationPoint.of(List.of(low(sweep)), low, reference),
                VariationPoint.of(List.of(high(sweep)), high, reference));
    }

    private static String low(KeySweep sweep) {
        return sweep.values().get(0);
    }

    private static String high(KeySweep sweep) {
        return sweep.values().get(sweep.values().size() - 1);
    }

    private int interrupted() {
        spec.commandLine().getErr().println("Interrupted; nothing was written.");
        return ExitCode.PARTIAL;
    }

    private void print(List<String> lines) {
        PrintWriter terminal = spec.commandLine().getOut();
        lines.forEach(terminal::println);
        terminal.flush();
    }

    private List<KeySweep> sweeps() {
        List<KeySweep> sweeps = new ArrayList<>();
        choice.changes().forEach((key, text) -> sweep(key, text).ifPresent(sweeps::add));
        return sweeps;
    }

    private Optional<KeySweep> sweep(String key, String text) {
        try {
            Optional<KeySweep> sweep = KeySweep.parse(key, text);
            if (sweep.isPresent() && KEYS_OF_CHANCE.contains(key)) {
                throw new IllegalArgumentException("cannot be varied, since every value is tried under the same skies;"
                        + " give one value with --" + key);
            }
            return sweep;
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), "--set " + key + ": " + e.getMessage(), e);
        }
    }

    /** Reads every scenario before the first is run, so that a wrong value is found at once. */
    private List<Scenario> scenarios(List<KeySweep> sweeps, List<List<String>> combinations) throws ScenarioProblems {
        List<Scenario> scenarios = new ArrayList<>();
        for (List<String> values : combinations) {
            Map<String, String> changes = new LinkedHashMap<>(simulation.changes());
            for (int i = 0; i < sweeps.size(); i++) {
                changes.put(sweeps.get(i).key(), values.get(i));
            }
            scenarios.add(choice.read(changes));
        }
        return scenarios;
    }

    /** Prints first, so that hours of work are not lost to a full disk. */
    private void show(Variation variation) throws NotWritten {
        print(new VariationText(variation).lines());
        Scenario scenario = variation.scenario();
        ResultFolder folder = new ResultFolder(out.resolve(scenario.name() + "-" + scenario.seed() + "-vary"));
        NotWritten.write(folder, List.of(new VariationCsv(variation)));
        print(List.of("", "Written to " + folder.path() + ": vary.csv"));
    }
}
