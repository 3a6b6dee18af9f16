package org.ionohaul.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ionohaul.report.PromiseReport;
import org.ionohaul.scenario.Deadline;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
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
            "Says which file sizes may be promised by a deadline, how surely, with each mode: the stations and the sky are"
                    + " the scenario's, files of every size are tried.",
            "",
            "With --size it answers the other way round: by when a file of that size may be promised.",
            ""
        },
        mixinStandardHelpOptions = true)
final class PromiseCommand implements Callable<Integer> {
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
                    + " scenario's clock, such as \"18:30\"; ${DEFAULT-VALUE} if not given.",
            converter = DeadlineConverter.class,
            defaultValue = "15 min")
    private Deadline deadline = new Deadline(900, false);

    @Option(
            names = "--sure",
            paramLabel = "PERCENT",
            description = "On how many of 100 trials the promise must hold; ${DEFAULT-VALUE} if not given.",
            converter = ShareConverter.class,
            defaultValue = "90 %")
    private double confidence = 0.9;

    @Option(
            names = "--size",
            paramLabel = "SIZE",
            description = "Asks by when a file of this size, such as \"40 kB\", may be promised; at most 1 MB.",
            converter = BytesConverter.class)
    private Optional<Long> bytes = Optional.empty();

    PromiseCommand(Simulation simulation) {
        this.simulation = simulation;
    }

    @Override
    public Integer call() throws ScenarioProblems {
        long largest = SizeGrid.BYTES.get(SizeGrid.BYTES.size() - 1);
        require(bytes.orElse(1L) >= 1 && bytes.orElse(1L) <= largest, "--size must be from 1 B to 1 MB");
        Understood understood = choice.understand(simulation.changes());
        Scenario asked = understood.scenario();
        double deadlineSeconds = deadline.afterSend(understood.sendClockSeconds());
        require(deadlineSeconds > 0, "--by must be a time above zero");
        Scenario scenario = bytes.map(size -> SizeTransfers.in(asked, rounded(size), asked.horizonSeconds()))
                .orElseGet(() ->
                        SizeTransfers.in(asked, largest, PromiseReport.LONGEST_DEADLINE_FACTOR * deadlineSeconds));
        StudyResult result = simulation.run(scenario, "Simulating");
        if (result.trialsDone() == 0) {
            spec.commandLine().getErr().println("Interrupted before the first trial was done.");
            return ExitCode.PARTIAL;
        }
        PromiseReport report = new PromiseReport(result, confidence);
        print(bytes.map(report::deadlines).orElseGet(() -> report.largestFiles(deadlineSeconds)));
        return result.isPartial() ? ExitCode.PARTIAL : ExitCode.DONE;
    }

    /** The size that is asked for is answered by the next larger one that is tried. */
    private static long rounded(long size) {
        return SizeGrid.BYTES.get(SizeGrid.indexNotBelow(size));
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
