package org.ionohaul.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.ionohaul.analysis.FilePromises;
import org.ionohaul.analysis.SizePromises;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.report.PromisePage;
import org.ionohaul.report.PromiseReport;
import org.ionohaul.report.RareCsv;
import org.ionohaul.report.RareWords;
import org.ionohaul.scenario.Deadline;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.scenario.Understood;
import org.ionohaul.study.SizeGrid;
import org.ionohaul.study.SizeTransfers;
import org.ionohaul.study.StudyResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Says how large a file may be promised by when, or by when a file of some size. */
@Command(
        name = "promise",
        description = {
            "Says which file sizes may be promised by a deadline, how surely, with each mode: the stations and the sky"
                    + " are the scenario's, files of every size are tried.",
            "",
            "With --size it answers the other way round: by when a file of that size may be promised and, with --by,"
                    + " how surely it is through by then.",
            "",
            "Also writes a folder with promise.html: with --size the share of trials through over time, else contours of"
                    + " size against deadline, at 5, 8 and 9 of 10 trials.",
            ""
        },
        mixinStandardHelpOptions = true)
final class PromiseCommand implements Callable<Integer> {
    private static final double USUAL_DEADLINE_SECONDS = 900;
    private static final double USUAL_CONFIDENCE = 0.9;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private final ScenarioChoice choice = new ScenarioChoice();

    @Mixin
    private final Simulation simulation;

    @Option(
            names = "--by",
            paramLabel = "TIME",
            description = "Deadline after pressing send, such as \"15 min\", or a time of day that comes after the"
                    + " scenario's clock, such as \"18:30\"; 15 min if neither it nor --size is given. Nothing is known"
                    + " after the scenario's horizon: later deadlines are answered for the horizon.",
            converter = DeadlineConverter.class)
    private Optional<Deadline> deadline = Optional.empty();

    @Option(
            names = "--sure",
            paramLabel = "PERCENT",
            description = "On how many of 100 trials the promise must hold; ${DEFAULT-VALUE} if not given.",
            converter = ShareConverter.class,
            defaultValue = "90 %")
    private double confidence = USUAL_CONFIDENCE;

    @Option(
            names = "--size",
            paramLabel = "SIZE",
            description = "Asks by when a file of this size, such as \"40 kB\", may be promised; at most 1 MB.",
            converter = BytesConverter.class)
    private Optional<Long> bytes = Optional.empty();

    @Mixin
    private final RareQuestion rare = new RareQuestion();

    @Mixin
    private ResultsPlace out = new ResultsPlace();

    PromiseCommand(Simulation simulation) {
        this.simulation = simulation;
    }

    @Override
    public Integer call() throws ScenarioProblems, NotWritten {
        rare.require(spec);
        require(
                !rare.isAsked() || (bytes.isPresent() && deadline.isPresent()),
                "--rare needs a --size and a --by: how seldom that file misses that deadline");
        long largest = SizeGrid.BYTES.get(SizeGrid.BYTES.size() - 1);
        require(bytes.orElse(1L) >= 1 && bytes.orElse(1L) <= largest, "--size must be from 1 B to 1 MB");
        Understood understood = choice.understand(simulation.changes());
        Scenario asked = understood.scenario();
        Optional<Double> deadlineSeconds = deadline.map(it -> it.afterSend(understood.sendClockSeconds()));
        require(deadlineSeconds.orElse(1.0) > 0, "--by must be a time above zero");
        Optional<Double> by = deadlineSeconds.map(it -> Math.min(it, asked.horizonSeconds()));
        double answered = by.orElse(Math.min(USUAL_DEADLINE_SECONDS, asked.horizonSeconds()));
        Scenario scenario = bytes.map(size -> sending(asked, size, by))
                .orElseGet(() -> SizeTransfers.in(
                        asked,
                        largest,
                        Math.min(asked.horizonSeconds(), SizePromises.LONGEST_DEADLINE_FACTOR * answered)));
        StudyResult result = simulation.run(scenario, "Simulating");
        if (result.trialsDone() == 0) {
            spec.commandLine().getErr().println("Interrupted before the first trial was done.");
            return ExitCode.PARTIAL;
        }
        ChartPage page = tell(result, answered);
        if (deadlineSeconds.orElse(answered) > asked.horizonSeconds()) {
            print(TextWrap.lines(
                    "The scenario ends at its horizon of " + TimeText.given(asked.horizonSeconds())
                            + ": what is through by then is through by "
                            + TimeText.given(deadlineSeconds.orElse(answered)) + ". A later horizon answers more.",
                    "",
                    PromiseReport.WIDTH));
        }
        if (result.isPartial()) {
            return ExitCode.PARTIAL;
        }
        List<ResultFolder.Text> files = new ArrayList<>(List.of(page));
        if (rare.isAsked()) {
            RareQuestion.Look look = rare.look(result, simulation);
            print(RareWords.lines(result.scenario(), look.misses(), PromiseReport.WIDTH));
            if (look.isCutShort()) {
                print(List.of("PARTIAL: interrupted before the deadline was looked at for rare misses of every mode."));
                return ExitCode.PARTIAL;
            }
            files.add(new RareCsv(look.misses()));
        }
        ResultFolder folder = out.folder(choice.folderName(asked, question(deadlineSeconds)));
        NotWritten.write(folder, files);
        print(List.of("", "Written to " + folder.path() + ": " + ResultFolder.names(files)));
        return ExitCode.DONE;
    }

    /** Prints what may be promised and returns the same as a page. */
    private ChartPage tell(StudyResult result, double deadlineSeconds) {
        if (bytes.isPresent()) {
            List<FilePromises> promises = FilePromises.of(result, confidence);
            print(PromiseReport.ofFile(result, promises));
            return PromisePage.ofFile(result, promises, choice.provenance());
        }
        List<SizePromises> promises = SizePromises.of(result, deadlineSeconds, confidence);
        print(PromiseReport.ofSizes(result, promises));
        return PromisePage.ofSizes(result, promises, choice.provenance());
    }

    /** Returns the name for what was asked, so that another question's page stays. */
    private Object[] question(Optional<Double> deadlineSeconds) {
        return Stream.of(
                        Optional.of("promise"),
                        bytes.map(SizeText::size),
                        deadlineSeconds.map(TimeText::given),
                        Optional.of(confidence)
                                .filter(it -> it != USUAL_CONFIDENCE)
                                .map(OddsText::odds))
                .flatMap(Optional::stream)
                .map(it -> it.replace(" ", ""))
                .toArray();
    }

    /** Returns the scenario with one file in place of what it sends, in every direction that occurs in it. */
    private static Scenario sending(Scenario asked, long size, Optional<Double> by) {
        List<Direction> directions = asked.transfers().stream()
                .flatMap(it -> it.directions().stream())
                .distinct()
                .sorted()
                .toList();
        Transfer file = new Transfer(
                "file",
                List.of(new PayloadFile("file", size)),
                directions,
                by.stream().toList(),
                asked.acceptsErrors());
        return asked.sending(List.of(file), asked.horizonSeconds());
    }

    private void print(List<String> lines) {
        PrintWriter terminal = spec.commandLine().getOut();
        lines.forEach(terminal::println);
        terminal.flush();
    }

    private void require(boolean holds, String message) {
        if (!holds) {
            throw new ParameterException(spec.commandLine(), message);
        }
    }
}
