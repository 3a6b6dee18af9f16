package org.ionohaul.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ionohaul.analysis.Findings;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.report.CheckpointFile;
import org.ionohaul.report.ReportHtml;
import org.ionohaul.report.SummaryJson;
import org.ionohaul.report.TextReport;
import org.ionohaul.report.TrialsCsv;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.study.Checkpoint;
import org.ionohaul.study.PrecisionGoal;
import org.ionohaul.study.SizeTransfers;
import org.ionohaul.study.StudyResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Runs a study and shows and writes what it finds. */
@Command(
        name = "study",
        description = {
            "Simulates a scenario many times, with each mode under the same skies, and says how soon and how surely the"
                    + " files are through.",
            "",
            "Prints a summary and writes a folder of results: report.html (open it in any browser; it needs no network),"
                    + " summary.json and trials.csv. The same file and seed give the same results, whatever the number of"
                    + " threads. Ctrl-C ends early with what is done.",
            ""
        },
        mixinStandardHelpOptions = true)
final class StudyCommand implements Callable<Integer> {
    /** Largest file that the answers on other sizes reach to. */
    private static final long LARGEST_BYTES = 1_000_000;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private final ScenarioChoice choice = new ScenarioChoice();

    @Mixin
    private final Simulation simulation;

    @Option(
            names = "--size-trials",
            paramLabel = "N",
            description = "How many trials to simulate besides, for answers on files of every size;"
                    + " ${DEFAULT-VALUE} if not given, 0 for none.",
            converter = CountConverter.class,
            defaultValue = "100")
    private int sizeTrials = 100;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "Where to put the folder of results, named after scenario and seed; ${DEFAULT-VALUE} if not given.",
            defaultValue = "results")
    private Path out = Path.of("results");

    @Option(
            names = "--precision",
            paramLabel = "GOAL",
            description =
                    "Simulates until every mode's answer is exact enough, such as \"P(deadline) within 2 points\" or"
                            + " \"90 %% time within 5 %%\"; at most as many trials as --trials says, else 100,000.",
            converter = PrecisionConverter.class)
    private Optional<PrecisionGoal> precision = Optional.empty();

    @Option(
            names = "--resume",
            description =
                    "Goes on with an interrupted study of the same file, seed and program; the results are the same"
                            + " as without the interruption.")
    private boolean isResumed;

    StudyCommand(Simulation simulation) {
        this.simulation = simulation;
    }

    @Override
    public Integer call() throws ScenarioProblems, NotWritten {
        if (sizeTrials < 0) {
            throw new ParameterException(spec.commandLine(), "--size-trials must not be negative: " + sizeTrials);
        }
        Scenario scenario = choice.read(simulation.changes());
        Scenario ofSizes = ofSizes(scenario);
        ResultFolder folder = new ResultFolder(out.resolve(scenario.name() + "-" + scenario.seed()));
        NotWritten.probe(folder);
        Provenance provenance = choice.provenance();
        String fingerprint = StudyFingerprint.of(provenance, scenario.seed(), choice.changes());
        Checkpoint before =
                isResumed ? interrupted(scenario, ofSizes, folder, fingerprint) : Checkpoint.nothing(scenario, ofSizes);
        StudyResult result = study(scenario, before.study());
        if (result.trialsDone() == 0) {
            spec.commandLine().getErr().println("Interrupted before the first trial was done; nothing was written.");
            return ExitCode.PARTIAL;
        }
        boolean areSizesDue = sizeTrials > 0 && !result.isPartial();
        StudyResult sizes = areSizesDue ? simulation.resume(ofSizes, before.sizes(), "Other sizes") : before.sizes();
        Findings findings = Findings.of(result, areSizesDue ? Optional.of(sizes) : Optional.empty(), provenance);
        show(findings, new CheckpointFile(new Checkpoint(result, sizes), fingerprint), folder);
        return findings.isPartial() ? ExitCode.PARTIAL : ExitCode.DONE;
    }

    private StudyResult study(Scenario scenario, StudyResult before) {
        return precision.isPresent()
                ? simulation.runUntil(scenario, before, askingSomething(precision.get(), scenario), "Simulating")
                : simulation.resume(scenario, before, "Simulating");
    }

    private PrecisionGoal askingSomething(PrecisionGoal goal, Scenario scenario) {
        if (!goal.asksAnythingOf(scenario.transfers())) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--precision: no transfer of this scenario has a deadline; add some, such as deadlines ="
                            + " [\"15 min\"], or ask for \"90 % time within 5 %\".");
        }
        return goal;
    }

    private Checkpoint interrupted(Scenario scenario, Scenario ofSizes, ResultFolder folder, String fingerprint)
            throws NotWritten {
        try {
            return CheckpointFile.find(folder, scenario, ofSizes, fingerprint)
                    .orElseThrow(() -> new ParameterException(
                            spec.commandLine(),
                            "--resume: in " + folder.path()
                                    + " there is no interrupted study of this file, these changes, this seed and this"
                                    + " version of the program; start it anew without --resume."));
        } catch (IOException e) {
            throw new NotWritten(folder.path(), e);
        }
    }

    /** Returns what is simulated besides, for answers on files of every size. */
    private Scenario ofSizes(Scenario scenario) {
        int trials = Math.max(1, Math.min(sizeTrials, scenario.trials()));
        return SizeTransfers.in(scenario.tried(trials), LARGEST_BYTES, scenario.horizonSeconds());
    }

    private static void tellMissed(PrintWriter terminal, Findings findings) {
        terminal.println();
        terminal.println("--precision: the goal was not reached within "
                + findings.result().trialsDone() + " trials;");
        terminal.println("some answers are less exact than asked for. More --trials go further.");
    }

    /** Prints first, so that hours of work are not lost to a full disk. */
    private void show(Findings findings, CheckpointFile unfinished, ResultFolder folder) throws NotWritten {
        PrintWriter terminal = spec.commandLine().getOut();
        new TextReport(findings).lines().forEach(terminal::println);
        if (!findings.result().isPartial()) {
            precision
                    .filter(goal -> !goal.isReachedBy(findings.result()))
                    .ifPresent(goal -> tellMissed(terminal, findings));
        }
        terminal.flush();
        List<ResultFolder.Entry> entries = new ArrayList<>(
                List.of(new SummaryJson(findings), new TrialsCsv(findings.result()), new ReportHtml(findings)));
        if (findings.isPartial()) {
            entries.add(unfinished);
        }
        NotWritten.write(folder, entries);
        terminal.println();
        terminal.println("Written to " + folder.path() + ": report.html, summary.json, trials.csv");
        if (findings.isPartial()) {
            terminal.println("Go on with the same command and --resume.");
        }
    }
}
