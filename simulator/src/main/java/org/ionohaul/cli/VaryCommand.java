package org.ionohaul.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.ionohaul.analysis.PointsDone;
import org.ionohaul.analysis.Tornado;
import org.ionohaul.analysis.Variation;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.study.KeySweep;
import org.ionohaul.study.PlannedPoint;
import org.ionohaul.study.SameCases;
import org.ionohaul.study.StudyResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Runs a scenario again and again with one or two keys changed, or with each of many changed alone. */
@Command(
        name = "vary",
        description = {
            "Simulates a scenario once for each value of one or two keys, under the same skies, and says what the"
                    + " change does to every mode and which mode is best where.",
            "",
            "Give the values as a range, --set near.snr=\"6..18 dB\", or with their number, \"6..18 dB : 5\", or as a"
                    + " list, --set near.congestion=\"quiet-band | busy-evening\". Any key of the scenario or, as"
                    + " modes.NAME.KEY, of a mode. A range here means values to try one after the other, not a value that"
                    + " is uncertain.",
            "",
            "Writes a folder of results: report.html with pictures (open it in any browser; it needs no network), and"
                    + " vary.csv, or tornado.csv with --tornado. Ctrl-C ends early with the values that are complete.",
            ""
        },
        mixinStandardHelpOptions = true)
final class VaryCommand implements Callable<Integer> {
    private static final int MOST_KEYS = 2;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private final ScenarioChoice choice = new ScenarioChoice();

    @Mixin
    private final Simulation simulation;

    @Mixin
    private ResultsPlace out = new ResultsPlace();

    @Option(
            names = "--tornado",
            description =
                    "Sets each key alone to the first and to the last of its values and ranks the keys by what they"
                            + " change; takes any number of keys.")
    private boolean isTornado;

    @Mixin
    private final Resumption resumption = new Resumption();

    VaryCommand(Simulation simulation) {
        this.simulation = simulation;
    }

    @Override
    public Integer call() throws ScenarioProblems, NotWritten {
        List<KeySweep> sweeps =
                new SweepReader(spec.commandLine(), choice.changes()).sweeps(isTornado ? Integer.MAX_VALUE : MOST_KEYS);
        List<PlannedPoint> plan = isTornado ? Tornado.plan(sweeps) : Variation.plan(sweeps);
        Set<String> varied = sweeps.stream().map(KeySweep::key).collect(Collectors.toUnmodifiableSet());
        List<Scenario> scenarios = scenarios(varied, plan);
        Scenario reference = scenarios.get(0);
        Provenance provenance = choice.provenance();
        WhatIf question = isTornado ? WhatIf.eachAlone(sweeps, provenance) : WhatIf.combined(sweeps, provenance);
        ResultFolder folder = out.folder(choice.folderName(reference, varied, question.name()));
        String fingerprint = String.join(
                "|",
                StudyFingerprint.of(provenance, reference.seed(), choice.changes()),
                Integer.toString(reference.trials()),
                question.name());
        try (UnfinishedRun run = resumption.open(folder, fingerprint)) {
            PointsDone done = points(plan, scenarios, run);
            boolean isPartial = done.points().size() < plan.size();
            if (done.points().size() < question.fewestPoints()) {
                spec.commandLine()
                        .getErr()
                        .println("Interrupted before the first value was done; go on with the same command"
                                + " and --resume.");
                return ExitCode.PARTIAL;
            }
            show(question.telling().apply(reference, done.points()), isPartial ? run.partial() : folder);
            if (isPartial) {
                print(List.of("Go on with the same command and --resume."));
                return ExitCode.PARTIAL;
            }
            run.finish();
            return ExitCode.DONE;
        }
    }

    /** Reads every scenario before the first is run, so that a wrong value is found at once. */
    private List<Scenario> scenarios(Set<String> varied, List<PlannedPoint> plan) throws ScenarioProblems {
        List<Scenario> scenarios = new ArrayList<>();
        for (PlannedPoint point : plan) {
            Map<String, String> changes = new LinkedHashMap<>(simulation.changes());
            changes.putAll(point.changes());
            scenarios.add(choice.read(changes, varied));
            if (!SameCases.of(scenarios.get(scenarios.size() - 1)).equals(SameCases.of(scenarios.get(0)))) {
                throw new ParameterException(
                        spec.commandLine(),
                        "--set: what is compared must be the same at every value: the same modes, transfers,"
                                + " directions and number of deadlines. Not so with " + point.changes() + ".");
            }
        }
        return scenarios;
    }

    /** Runs what is not done yet, until an interruption. */
    private PointsDone points(List<PlannedPoint> plan, List<Scenario> scenarios, UnfinishedRun run) throws NotWritten {
        PointsDone done = PointsDone.noneOf(plan.size());
        for (int i = 0; i < plan.size(); i++) {
            StudyResult result = simulation.run(scenarios.get(i), run.rows("point " + i), i + 1 + " of " + plan.size());
            if (result.isPartial()) {
                return done;
            }
            done = done.and(plan.get(i), result);
        }
        return done;
    }

    /** Prints first, so that hours of work are not lost to a full disk. */
    private void show(WhatIf.Told told, ResultFolder folder) throws NotWritten {
        print(told.lines());
        NotWritten.write(folder, told.files());
        print(List.of("", "Written to " + folder.path() + ": " + ResultFolder.names(told.files())));
    }

    private void print(List<String> lines) {
        PrintWriter terminal = spec.commandLine().getOut();
        lines.forEach(terminal::println);
        terminal.flush();
    }
}
