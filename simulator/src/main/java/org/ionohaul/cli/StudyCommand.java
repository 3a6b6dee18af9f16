package org.ionohaul.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.ionohaul.report.Provenance;
import org.ionohaul.report.ReportHtml;
import org.ionohaul.report.ResultFolder;
import org.ionohaul.report.SummaryJson;
import org.ionohaul.report.TextReport;
import org.ionohaul.report.TrialsCsv;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.StudyRunner;
import org.ionohaul.study.StudySummary;
import org.ionohaul.study.TrialSource;
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
    private final Function<Scenario, TrialSource> trialsOf;
    private final Interruption interruption;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private final ScenarioChoice choice = new ScenarioChoice();

    @Option(
            names = "--trials",
            paramLabel = "N",
            description =
                    "How many evenings to simulate, instead of what the file says. More make the answers sharper: four"
                            + " times as many halve the uncertainty.")
    private Optional<Integer> trials = Optional.empty();

    @Option(names = "--seed", paramLabel = "N", description = "Seed of all chance, instead of what the file says.")
    private Optional<Long> seed = Optional.empty();

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "How many threads to use; all processors if not given. Does not change results.")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "Where to put the folder of results, named after scenario and seed; ${DEFAULT-VALUE} if not given.",
            defaultValue = "results")
    private Path out = Path.of("results");

    StudyCommand(Function<Scenario, TrialSource> trialsOf, Interruption interruption) {
        this.trialsOf = trialsOf;
        this.interruption = interruption;
    }

    @Override
    public Integer call() throws ScenarioProblems, NotWritten {
        if (threads < 1) {
            throw new ParameterException(spec.commandLine(), "--threads must be at least 1: " + threads);
        }
        Scenario scenario = choice.read(changes());
        ResultFolder folder = new ResultFolder(out.resolve(scenario.name() + "-" + scenario.seed()));
        probe(folder);
        Provenance provenance = ScenarioFiles.provenance(choice.file(), scenario);
        StudyResult result = TrialProgress.during(
                progress -> new StudyRunner(scenario, trialsOf.apply(scenario), threads, progress, interruption).run(),
                scenario.trials());
        if (result.trialsDone() == 0) {
            spec.commandLine().getErr().println("Interrupted before the first trial was done; nothing was written.");
            return ExitCode.PARTIAL;
        }
        show(result, provenance, folder);
        return result.isPartial() ? ExitCode.PARTIAL : ExitCode.DONE;
    }

    private Map<String, String> changes() {
        Map<String, String> changes = new LinkedHashMap<>();
        trials.ifPresent(it -> changes.put("trials", it.toString()));
        seed.ifPresent(it -> changes.put("seed", it.toString()));
        return changes;
    }

    private static void probe(ResultFolder folder) throws NotWritten {
        try {
            folder.probe();
        } catch (IOException e) {
            throw new NotWritten(folder.path(), e);
        }
    }

    /** Prints first, so that hours of work are not lost to a full disk. */
    private void show(StudyResult result, Provenance provenance, ResultFolder folder) throws NotWritten {
        StudySummary summary = StudySummary.of(result);
        PrintWriter terminal = spec.commandLine().getOut();
        new TextReport(result, summary).lines().forEach(terminal::println);
        terminal.flush();
        try {
            folder.write(List.of(
                    new SummaryJson(result, summary, provenance),
                    new TrialsCsv(result),
                    new ReportHtml(result, summary, provenance)));
        } catch (IOException e) {
            throw new NotWritten(folder.path(), e);
        }
        terminal.println();
        terminal.println("Written to " + folder.path() + ": report.html, summary.json, trials.csv");
    }
}
