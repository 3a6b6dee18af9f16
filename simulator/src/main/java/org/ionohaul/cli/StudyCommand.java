package org.ionohaul.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ionohaul.analysis.Besides;
import org.ionohaul.analysis.Findings;
import org.ionohaul.analysis.NetRates;
import org.ionohaul.analysis.SizeAnswers;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.report.FirstScreen;
import org.ionohaul.report.RareCsv;
import org.ionohaul.report.RareWords;
import org.ionohaul.report.ReportHtml;
import org.ionohaul.report.StudyWords;
import org.ionohaul.report.SummaryJson;
import org.ionohaul.report.TextReport;
import org.ionohaul.report.TrialsCsv;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.study.PrecisionGoal;
import org.ionohaul.study.RowStore;
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
            "Prints the answer on one screen and writes a folder of results: report.html (open it in any browser; it needs"
                    + " no network), summary.json and trials.csv. The same file and seed give the same results, whatever the number of"
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

    @Mixin
    private final Screen screen = new Screen();

    @Option(
            names = "--full",
            description = "Prints more than the first screen: tables, pairs of modes, other sizes, the sky.")
    private boolean isFull;

    @Option(
            names = "--size-trials",
            paramLabel = "N",
            description = "How many trials to simulate besides, for answers on files of every size;"
                    + " ${DEFAULT-VALUE} if not given, 0 for none.",
            converter = CountConverter.class,
            defaultValue = "100")
    private int sizeTrials = 100;

    @Mixin
    private ResultsPlace out = new ResultsPlace();

    @Mixin
    private final RareQuestion rare = new RareQuestion();

    @Option(
            names = "--precision",
            paramLabel = "GOAL",
            description =
                    "Simulates until every mode's answer is exact enough, such as \"P(deadline) within 2 points\" or"
                            + " \"90 %% time within 5 %%\"; at most as many trials as --trials says, else 100,000.",
            converter = PrecisionConverter.class)
    private Optional<PrecisionGoal> precision = Optional.empty();

    @Mixin
    private final Resumption resumption = new Resumption();

    StudyCommand(Simulation simulation) {
        this.simulation = simulation;
    }

    @Override
    public Integer call() throws ScenarioProblems, NotWritten {
        if (sizeTrials < 0) {
            throw new ParameterException(spec.commandLine(), "--size-trials must not be negative: " + sizeTrials);
        }
        rare.require(spec);
        int width = screen.width();
        Scenario scenario = choice.read(simulation.changes());
        precision.ifPresent(goal -> requireDeadlines(goal, scenario));
        Scenario ofSizes = ofSizes(scenario);
        ResultFolder folder = out.folder(choice.folderName(scenario));
        Provenance provenance = choice.provenance();
        String fingerprint = StudyFingerprint.of(provenance, scenario.seed(), choice.changes());
        try (UnfinishedRun run = resumption.open(folder, fingerprint)) {
            StudyResult result = study(scenario, run.rows("study"));
            if (result.trialsDone() == 0) {
                run.finish();
                spec.commandLine()
                        .getErr()
                        .println("Interrupted before the first trial was done; nothing was written.");
                return ExitCode.PARTIAL;
            }
            StudySummary summary = StudySummary.of(result);
            screen.print(new FirstScreen(result, summary, width).lines());
            Besides besides = result.isPartial() ? Besides.NOTHING : besides(scenario, ofSizes, run);
            Findings findings = Findings.of(result, summary, besides, provenance);
            if (show(findings, run, folder, width)) {
                run.finish();
                return ExitCode.DONE;
            }
            print("Go on with the same command and --resume.");
            return ExitCode.PARTIAL;
        }
    }

    private StudyResult study(Scenario scenario, RowStore rows) {
        return precision.isPresent()
                ? simulation.runUntil(scenario, rows, precision.get(), "Simulating")
                : simulation.run(scenario, rows, "Simulating");
    }

    private Besides besides(Scenario scenario, Scenario ofSizes, UnfinishedRun run) throws NotWritten {
        Optional<StudyResult> sizes = sizeTrials > 0 ? Optional.of(sizes(ofSizes, run)) : Optional.empty();
        if (sizes.filter(StudyResult::isPartial).isPresent()) {
            return new Besides(sizes, Optional.empty(), true);
        }
        Optional<NetRates> rates =
                simulation.inPool("Steady levels", NetRates.trialsToMeasure(), pool -> NetRates.of(scenario, pool));
        return new Besides(sizes, rates, rates.isEmpty());
    }

    /** Sends files of other sizes, then those larger ones about which modes change places. */
    private StudyResult sizes(Scenario ofSizes, UnfinishedRun run) throws NotWritten {
        StudyResult sizes = sizes(ofSizes, run, "Other sizes");
        while (!sizes.isPartial()) {
            Optional<Scenario> more = SizeAnswers.toBeSent(sizes);
            if (more.isEmpty()) {
                return sizes;
            }
            sizes = sizes.with(sizes(more.get(), run, "Sizes about which modes change places"));
        }
        return sizes;
    }

    private StudyResult sizes(Scenario scenario, UnfinishedRun run, String task) throws NotWritten {
        return simulation.run(scenario, run.rows("sizes " + sent(scenario)), task);
    }

    private void requireDeadlines(PrecisionGoal goal, Scenario scenario) {
        if (!goal.asksAnythingOf(scenario.transfers())) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--precision: no transfer of this scenario has a deadline; add some, such as deadlines ="
                            + " [\"15 min\"], or ask for \"90 % time within 5 %\".");
        }
    }

    /** Returns what is simulated besides, for answers on files of every size. */
    private Scenario ofSizes(Scenario scenario) {
        int trials = Math.max(1, Math.min(sizeTrials, scenario.trials()));
        return SizeTransfers.in(scenario.tried(trials), LARGEST_BYTES, scenario.horizonSeconds());
    }

    /** Returns how many bytes each transfer has, and which way it goes: rows of other transfers are no rows of these. */
    private static List<String> sent(Scenario scenario) {
        return scenario.transfers().stream()
                .map(it -> it.totalBytes() + " " + it.directions())
                .toList();
    }

    private static void tellMissed(PrintWriter terminal, Findings findings) {
        terminal.println();
        terminal.println("--precision: the goal was not reached within "
                + findings.result().trialsDone() + " trials;");
        terminal.println("some answers are less exact than asked for. More --trials go further.");
    }

    /**
     * Prints first, so that hours of work are not lost to a full disk.
     *
     * @return whether everything asked for was done
     */
    private boolean show(Findings findings, UnfinishedRun run, ResultFolder folder, int width) throws NotWritten {
        PrintWriter terminal = spec.commandLine().getOut();
        if (findings.besidesAreCutShort()) {
            terminal.println();
            TextWrap.lines(StudyWords.partial(findings), "", width).forEach(terminal::println);
        }
        if (isFull) {
            new TextReport(findings, width).details().forEach(terminal::println);
        }
        if (!findings.result().isPartial()) {
            precision
                    .filter(goal -> !goal.isReachedBy(findings.result()))
                    .ifPresent(goal -> tellMissed(terminal, findings));
        }
        terminal.flush();
        Findings told = findings;
        List<ResultFolder.Text> files = new ArrayList<>();
        if (rare.isAsked() && !findings.isPartial()) {
            RareQuestion.Look look = rare.look(findings.result(), simulation);
            RareWords.lines(findings.result().scenario(), look.misses(), width).forEach(terminal::println);
            files.add(new RareCsv(look.misses()));
            if (look.isCutShort()) {
                print("PARTIAL: interrupted before every deadline was looked at for rare misses.");
                told = findings.cutShort();
            }
        }
        files.addAll(0, List.of(new ReportHtml(told), new SummaryJson(told), new TrialsCsv(told.result())));
        ResultFolder written = told.isPartial() ? run.partial() : folder;
        NotWritten.write(written, files);
        print("");
        if (!isFull) {
            print("--full prints all tables; report.html has pictures.");
        }
        print("Written to " + written.path() + ": " + ResultFolder.names(files));
        return !told.isPartial();
    }

    private void print(String line) {
        spec.commandLine().getOut().println(line);
    }
}
