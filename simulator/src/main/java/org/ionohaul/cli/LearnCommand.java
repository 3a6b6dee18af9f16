package org.ionohaul.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.ionohaul.fieldlog.FieldLog;
import org.ionohaul.fieldlog.FieldLogReader;
import org.ionohaul.learning.LearnedJson;
import org.ionohaul.learning.LearnedLog;
import org.ionohaul.learning.LearnedPage;
import org.ionohaul.learning.LearnedText;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioText;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Understood;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Lets a log correct the uncertain inputs of a scenario. */
@Command(
        name = "learn",
        description = {
            "Lets a log of runs on the air correct what a scenario is not sure of: its inputs that are distributions say what is"
                    + " thought possible, and the runs and readings say which of it made them likely.",
            "",
            "Shows each input before and after, what the log can't tell, and what is to be expected now. Says so where"
                    + " no values of the inputs explain the log, or where too little was simulated to tell. With --write the"
                    + " scenario is written with its inputs as narrow as the log makes them, ready for study. How a log is"
                    + " written stands in scenarios/README.md.",
            "",
            "Prints a summary and writes a folder of results: learn.html (with pictures) and learn.json.",
            ""
        },
        mixinStandardHelpOptions = true)
final class LearnCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private final ScenarioChoice choice = new ScenarioChoice();

    @Mixin
    private final Simulation simulation;

    @Mixin
    private final LogLearning learning = new LogLearning();

    @Option(
            names = "--log",
            paramLabel = "CSV",
            required = true,
            description = "The log: a table as a spreadsheet writes it, a line a run.")
    private Path log = Path.of("");

    @Option(
            names = "--write",
            paramLabel = "FILE",
            description =
                    "Writes the scenario with what was learned, beside its folder of modes; the file must not be there.")
    private Optional<Path> written = Optional.empty();

    @Mixin
    private ResultsPlace out = new ResultsPlace();

    LearnCommand(Simulation simulation) {
        this.simulation = simulation;
    }

    @Override
    public Integer call() throws ScenarioProblems, NotWritten {
        Understood understood = choice.understand(simulation.changes());
        Set<String> daily = learning.daily(understood);
        double gapDb = learning.gapDb();
        written.ifPresent(it -> require(!Files.exists(it), it + " is there already; name another file"));
        List<String> modes =
                understood.scenario().modes().stream().map(Mode::name).toList();
        FieldLog runs = FieldLogReader.read(SourceFiles.DISK, log, modes);
        ScenarioText text = LogLearning.text(choice);
        ResultFolder folder = folder(understood.scenario(), runs);
        NotWritten.probe(folder);
        Optional<LearnedLog> learned = simulation.inPool(
                "Simulating",
                understood.scenario().trials(),
                pool -> LearnedLog.of(understood, text, runs, daily, gapDb, pool));
        if (learned.isEmpty()) {
            spec.commandLine().getErr().println("Interrupted; nothing can be learned from a part.");
            return ExitCode.PARTIAL;
        }
        PrintWriter terminal = spec.commandLine().getOut();
        new LearnedText(learned.get()).lines().forEach(terminal::println);
        if (learned.get().isFitted() && written.isPresent()) {
            write(written.get(), learned.get(), text);
            terminal.println();
            terminal.println("Written to " + written.get() + ".");
        }
        terminal.flush();
        NotWritten.write(
                folder,
                List.of(
                        LearnedPage.of(learned.get(), choice.provenance(log)),
                        new LearnedJson(learned.get(), choice.provenance(log))));
        terminal.println();
        terminal.println("Results in " + folder.path() + ": learn.html, learn.json");
        return learned.get().isFitted() || written.isEmpty() ? ExitCode.DONE : ExitCode.NOT_WRITTEN;
    }

    /** What is not the scenario's is part of the question, and so of the folder's name. */
    private ResultFolder folder(Scenario scenario, FieldLog runs) {
        List<Object> names = new ArrayList<>(List.of("learn", runs.name()));
        names.addAll(learning.names());
        return out.folder(choice.folderName(scenario, names.toArray()));
    }

    private void write(Path file, LearnedLog learned, ScenarioText text) throws NotWritten {
        ScenarioText sharpened = learned.sharpened(text);
        try {
            Files.writeString(
                    file,
                    "# Sharpened by what the log " + log.getFileName() + " tells, each input by itself; from "
                            + choice.file().getFileName() + ".\n" + sharpened);
        } catch (IOException e) {
            throw new NotWritten(file, e);
        }
    }

    private void require(boolean holds, String message) {
        if (!holds) {
            throw new ParameterException(spec.commandLine(), message);
        }
    }
}
