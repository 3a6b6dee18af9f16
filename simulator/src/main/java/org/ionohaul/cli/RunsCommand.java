package org.ionohaul.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.ionohaul.onair.Criterion;
import org.ionohaul.onair.RunAnswer;
import org.ionohaul.onair.RunFindings;
import org.ionohaul.onair.RunQuestion;
import org.ionohaul.onair.RunsCsv;
import org.ionohaul.onair.RunsJson;
import org.ionohaul.onair.RunsPage;
import org.ionohaul.onair.RunsText;
import org.ionohaul.onair.Truth;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Deadline;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.scenario.Understood;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Says what runs on the air can tell, and plans them. */
@Command(
        name = "runs",
        description = {
            "Says what runs on the air, one after another, can tell: how likely one run each names the truly better mode, or"
                    + " three, or ten, in which order, by which test, and how often a mode is found better that is the same."
                    + " Then it plans the runs that would settle it.",
            "",
            "Prints a summary and writes a folder of results: runs.html (with pictures), runs.csv and runs.json. The same file and seed give"
                    + " the same results, whatever the number of threads. Ctrl-C ends early with what is done.",
            ""
        },
        mixinStandardHelpOptions = true)
final class RunsCommand implements Callable<Integer> {
    /** Comparisons, unless asked for others: each is some two hundred sessions. */
    private static final int USUAL_COMPARISONS = 100;

    private static final double ERROR_RATE = 0.05;

    private static final double LATEST_START_SECONDS = 12 * 3600;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private final ScenarioChoice choice = new ScenarioChoice();

    @Mixin
    private final Simulation simulation;

    @Option(
            names = "--mode",
            paramLabel = "MODE",
            description =
                    "A mode to compare; repeat it for each, in the order of the runs. The file's first two if not given.")
    private List<String> modes = new ArrayList<>();

    @Mixin
    private final CaseChoice sent = new CaseChoice();

    @Option(
            names = "--start",
            paramLabel = "TIME",
            description = "When the first run of a day begins: a time of day such as \"18:30\", or so long after the"
                    + " scenario's pressing send, such as \"20 min\". At once if not given.",
            converter = DeadlineConverter.class)
    private Optional<Deadline> start = Optional.empty();

    @Option(
            names = "--gap",
            paramLabel = "M",
            description =
                    "From the end of a run to the beginning of the next, in minutes or with a unit; ${DEFAULT-VALUE} if"
                            + " not given.",
            converter = MinutesConverter.class,
            defaultValue = "3 min")
    private double gapSeconds = 180;

    @Option(
            names = "--by",
            paramLabel = "TIME",
            description =
                    "Better is who keeps this deadline after pressing send more often; if not given, who is through"
                            + " sooner on the median run.",
            converter = MinutesConverter.class)
    private Optional<Double> deadlineSeconds = Optional.empty();

    @Option(
            names = {"--sitting", "--evening"},
            paramLabel = "M",
            description = "How long the runs of one day may take, in minutes or with a unit: longer plans are left out;"
                    + " ${DEFAULT-VALUE} if not given.",
            converter = MinutesConverter.class,
            defaultValue = "3 h")
    private double eveningSeconds = 10800;

    @Mixin
    private ResultsPlace out = new ResultsPlace();

    RunsCommand(Simulation simulation) {
        this.simulation = simulation;
    }

    @Override
    public Integer call() throws ScenarioProblems, NotWritten {
        Understood understood = choice.understand(simulation.changes());
        RunQuestion question = question(understood);
        ResultFolder folder = folder(question);
        NotWritten.probe(folder);
        Optional<List<Truth>> truths = simulation.inPool("The truth", question.truthTrials(), question::truths);
        Optional<RunFindings> findings = truths.flatMap(it ->
                simulation.inPool("Comparisons", question.comparisons(), pool -> RunFindings.of(question, it, pool)));
        if (findings.isEmpty()) {
            spec.commandLine().getErr().println("Interrupted before anything could be told; nothing was written.");
            return ExitCode.PARTIAL;
        }
        boolean isPartial = findings.get().isPartial();
        show(
                RunAnswer.of(findings.get(), understood.sendClockSeconds(), eveningSeconds, choice.provenance()),
                isPartial ? folder.partial() : folder);
        if (isPartial) {
            return ExitCode.PARTIAL;
        }
        NotWritten.delete(folder.partial());
        return ExitCode.DONE;
    }

    private RunQuestion question(Understood understood) {
        Scenario scenario = understood.scenario();
        Transfer itsTransfer = sent.transfer(scenario);
        double startSeconds =
                start.map(it -> it.afterSend(understood.sendClockSeconds())).orElse(0.0);
        require(
                startSeconds <= LATEST_START_SECONDS,
                "--start must come within 12 hours after the scenario's pressing send; begin the scenario earlier with --set"
                        + " clock=\"...\"");
        require(deadlineSeconds.orElse(1.0) > 0, "--by must be a time above zero");
        require(
                deadlineSeconds.orElse(0.0) <= scenario.horizonSeconds(),
                "--by lies beyond the horizon of " + TimeText.given(scenario.horizonSeconds())
                        + ": by then no run is watched any more; raise it with --set horizon=\"...\"");
        require(gapSeconds >= 0, "--gap must not be negative");
        return new RunQuestion(
                scenario,
                simulation.trialsAsked().orElse(Math.min(USUAL_COMPARISONS, scenario.trials())),
                compared(scenario),
                itsTransfer,
                sent.direction(itsTransfer),
                new Criterion(deadlineSeconds.map(OptionalDouble::of).orElseGet(OptionalDouble::empty)),
                startSeconds,
                gapSeconds,
                ERROR_RATE);
    }

    private List<Mode> compared(Scenario scenario) {
        List<Mode> compared = modes.isEmpty()
                ? scenario.modes().stream().limit(2).toList()
                : modes.stream()
                        .map(it -> NamedChoice.of(spec, "--mode", Optional.of(it), scenario.modes(), Mode::name))
                        .distinct()
                        .toList();
        require(compared.size() >= 2, "runs compare two modes or more; name them with --mode, once for each");
        return compared;
    }

    private ResultFolder folder(RunQuestion question) {
        return out.folder(choice.folderName(
                question.scenario(), "runs", question.transfer().name(), NamedChoice.word(question.direction())));
    }

    /** Prints first, so that minutes of work are not lost to a full disk. */
    private void show(RunAnswer answer, ResultFolder folder) throws NotWritten {
        PrintWriter terminal = spec.commandLine().getOut();
        new RunsText(answer).lines().forEach(terminal::println);
        terminal.flush();
        NotWritten.write(folder, List.of(RunsPage.of(answer), new RunsCsv(answer), new RunsJson(answer)));
        terminal.println();
        terminal.println("Written to " + folder.path() + ": runs.html, runs.csv, runs.json");
    }

    private void require(boolean holds, String message) {
        if (!holds) {
            throw new ParameterException(spec.commandLine(), message);
        }
    }
}
