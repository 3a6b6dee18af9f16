package org.ionohaul.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.rendering.FolderName;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.NetReader;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.study.KeySweep;
import org.ionohaul.study.LineStore;
import org.ionohaul.traffic.NetCsv;
import org.ionohaul.traffic.NetFindings;
import org.ionohaul.traffic.NetJson;
import org.ionohaul.traffic.NetPage;
import org.ionohaul.traffic.NetPoint;
import org.ionohaul.traffic.NetSweep;
import org.ionohaul.traffic.NetText;
import org.ionohaul.traffic.TrialLines;
import org.ionohaul.trial.NetTrials;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says how many stations fare that share channels and one gateway. */
@Command(
        name = "net",
        description = {
            "Says how the stations of a net fare that call one gateway: how long each kind of message takes from written to"
                    + " delivered, how sure its deadlines are, who waits, what is lost to collisions and to calling a busy"
                    + " gateway. With --vary, at several values of a key: more stations, more messages, another channel,"
                    + " another discipline; and where waiting grows beyond bounds.",
            "",
            "Prints a summary and writes a folder of results: net.html (with the time line of a trial, or the knee), net.csv and net.json. The same file and seed give the same results,"
                    + " whatever the number of threads. Trials are kept as they are done: Ctrl-C or a power cut loses"
                    + " seconds, --resume goes on.",
            ""
        },
        mixinStandardHelpOptions = true)
final class NetCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "FILE",
            description = "The net's file; its mode lies in the folder modes beside it or beside its folder.")
    private Path file = Path.of("");

    @Option(
            names = "--set",
            paramLabel = "KEY=VALUE",
            description = "Takes this value instead of the file's, such as --set group.1.count=20; may be repeated.",
            converter = Setting.Converter.class)
    private List<Setting> settings = new ArrayList<>();

    @Option(
            names = "--vary",
            paramLabel = "KEY=VALUES",
            description =
                    "Tries several values of a key: a list, such as --vary discipline.access=\"free | roster\", or a"
                            + " range, such as --vary load=\"0.5..3 : 6\" for six.",
            converter = Setting.Converter.class)
    private Optional<Setting> varied = Optional.empty();

    @Mixin
    private final Simulation simulation;

    @Mixin
    private final ResultsPlace out = new ResultsPlace();

    @Mixin
    private final Resumption resumption = new Resumption();

    NetCommand(Simulation simulation) {
        this.simulation = simulation;
    }

    @Override
    public Integer call() throws ScenarioProblems, NotWritten {
        Optional<KeySweep> sweep = varied.map(it -> new SweepReader(spec.commandLine(), Map.of(it.key(), it.value()))
                .sweeps(1)
                .get(0));
        List<String> values = sweep.map(KeySweep::values).orElse(List.of(""));
        List<NetScenario> scenarios = new ArrayList<>();
        for (String value : values) {
            Map<String, String> changes = changes();
            sweep.ifPresent(it -> changes.put(it.key(), value));
            NetReader.Read read = NetReader.read(SourceFiles.DISK, source(), changes);
            if (scenarios.isEmpty()) {
                WarningList.print(read.warnings(), spec.commandLine().getErr());
            }
            scenarios.add(read.scenario());
        }
        ResultFolder folder = folder(scenarios.get(0));
        try (UnfinishedRun run = resumption.open(folder, fingerprint(scenarios.get(0)))) {
            List<NetPoint> points = points(scenarios, values, run);
            return finish(run, folder, sweep.map(KeySweep::key).orElse(""), points, scenarios);
        }
    }

    /** Returns what is done of each value, up to the first of which nothing is. */
    private List<NetPoint> points(List<NetScenario> scenarios, List<String> values, UnfinishedRun run)
            throws NotWritten {
        List<NetPoint> points = new ArrayList<>();
        boolean isInterrupted = false;
        for (int point = 0; point < scenarios.size() && !isInterrupted; point++) {
            NetScenario scenario = scenarios.get(point);
            LineStore store = run.lines("point " + point);
            TrialLines lines = new TrialLines(scenario);
            NetTrials trials = new NetTrials(scenario);
            String task = values.get(point).isEmpty() ? "Trials" : values.get(point);
            simulation.inPool(task, scenario.trials(), pool -> {
                pool.run(scenario.trials(), trial -> lines.of(trials.run(trial)), store);
                return store;
            });
            isInterrupted = store.trials() < scenario.trials();
            if (store.trials() > 0) {
                points.add(new NetPoint(values.get(point), findings(scenario, lines, store)));
            }
        }
        return points;
    }

    private static NetFindings findings(NetScenario scenario, TrialLines lines, LineStore store) {
        try {
            return NetFindings.of(scenario, lines.trials(store));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private int finish(
            UnfinishedRun run, ResultFolder folder, String key, List<NetPoint> points, List<NetScenario> scenarios)
            throws NotWritten {
        PrintWriter terminal = spec.commandLine().getOut();
        if (points.isEmpty()) {
            spec.commandLine().getErr().println("Interrupted before the first trial was done; nothing was written.");
            return ExitCode.PARTIAL;
        }
        int asked = scenarios.get(0).trials();
        boolean isPartial = points.size() < scenarios.size()
                || points.get(points.size() - 1).findings().trialsDone() < asked;
        List<String> lines =
                key.isEmpty() ? new NetText(points.get(0).findings()).lines() : new NetSweep(key, points).lines();
        lines.forEach(terminal::println);
        terminal.flush();
        ResultFolder written = isPartial ? run.partial() : folder;
        NotWritten.write(
                written,
                List.of(
                        page(key, points, scenarios.get(0)),
                        new NetCsv(key, points),
                        new NetJson(key, points, provenance(), asked)));
        terminal.println();
        terminal.println("Written to " + written.path() + ": net.html, net.csv, net.json");
        if (isPartial) {
            terminal.println("PARTIAL: interrupted. Go on with the same command and --resume.");
            terminal.flush();
            return ExitCode.PARTIAL;
        }
        terminal.flush();
        run.finish();
        return ExitCode.DONE;
    }

    private ChartPage page(String key, List<NetPoint> points, NetScenario scenario) {
        if (key.isEmpty()) {
            return NetPage.of(points.get(0).findings(), new NetTrials(scenario).run(0, true), provenance());
        }
        List<String> values = points.stream().map(NetPoint::value).toList();
        List<Double> numbers = values.size() > 1 ? new KeySweep(key, values).numbers() : List.of();
        return NetPage.of(new NetSweep(key, points), numbers, provenance());
    }

    private Path source() {
        return ScenarioReader.named(file);
    }

    private Map<String, String> changes() {
        Map<String, String> changes = new LinkedHashMap<>();
        settings.forEach(it -> changes.put(it.key(), it.value()));
        changes.putAll(simulation.changes());
        return changes;
    }

    private Provenance provenance() {
        try {
            return NetReader.provenance(SourceFiles.DISK, source(), changes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String fingerprint(NetScenario first) {
        String points = varied.map(it -> it.key() + " = " + it.value()).orElse("");
        return String.join("|", "net", StudyFingerprint.of(provenance(), first.seed(), changes()), points);
    }

    /** A what-if never takes the place of the file's own results. */
    private ResultFolder folder(NetScenario scenario) {
        List<Object> names = new ArrayList<>(List.of(scenario.name(), scenario.seed()));
        Map<String, String> changes = new TreeMap<>(changes());
        changes.keySet().removeAll(List.of("seed", "trials"));
        changes.forEach((key, value) -> names.add(key + "-" + value));
        names.add("net");
        varied.ifPresent(it -> names.add(it.key()));
        return out.folder(FolderName.of(names.toArray()));
    }
}
