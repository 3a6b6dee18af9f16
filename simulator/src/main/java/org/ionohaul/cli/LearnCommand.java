package org.ionohaul.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.ionohaul.fieldlog.FieldLog;
import org.ionohaul.fieldlog.FieldLogReader;
import org.ionohaul.learning.LearnedJson;
import org.ionohaul.learning.LearnedLog;
import org.ionohaul.learning.LearnedText;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Quantity;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioText;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Spelling;
import org.ionohaul.scenario.Understood;
import org.ionohaul.scenario.WrongValue;
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
            "Prints a summary and writes a folder of results: learn.json.",
            ""
        },
        mixinStandardHelpOptions = true)
final class LearnCommand implements Callable<Integer> {
    private static final double MOST_GAP_DB = 20;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private final ScenarioChoice choice = new ScenarioChoice();

    @Mixin
    private final Simulation simulation;

    @Option(
            names = "--log",
            paramLabel = "CSV",
            required = true,
            description = "The log: a table as a spreadsheet writes it, a line a run.")
    private Path log = Path.of("");

    @Option(
            names = "--daily",
            paramLabel = "KEY",
            description =
                    "An uncertain input that changes from day to day, such as the noise of the neighbours: each date in"
                            + " the log has a value of its own, and the forecast is for another day; may be repeated. The level of the day,"
                            + " sky.day-to-day, always does.")
    private List<String> dailyKeys = new ArrayList<>();

    @Option(
            names = "--gap",
            paramLabel = "DB",
            description =
                    "By how much modes may fall short of their models, or exceed them, such as \"2 dB\": the standard"
                            + " deviation of what is thought possible; learned for each mode. Nothing if not given.")
    private Optional<String> gap = Optional.empty();

    @Option(
            names = "--write",
            paramLabel = "FILE",
            description =
                    "Writes the scenario with what was learned, beside its folder of modes; the file must not be there.")
    private Optional<Path> written = Optional.empty();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where to put the folder of results; ${DEFAULT-VALUE} if not given.",
            defaultValue = "results")
    private Path out = Path.of("results");

    LearnCommand(Simulation simulation) {
        this.simulation = simulation;
    }

    @Override
    public Integer call() throws ScenarioProblems, NotWritten {
        Understood understood = choice.understand(simulation.changes());
        Set<String> daily = daily(understood);
        double gapDb = gapDb();
        require(
                gapDb > 0 || !understood.scenario().sky().uncertainKeys().isEmpty(),
                "the scenario is sure of everything; write what you don't know as a distribution, such as --set"
                        + " near.snr=\"12 dB ± 4 dB\"");
        written.ifPresent(it -> require(!Files.exists(it), it + " is there already; name another file"));
        List<String> modes =
                understood.scenario().modes().stream().map(Mode::name).toList();
        FieldLog runs = FieldLogReader.read(SourceFiles.DISK, log, modes);
        ScenarioText text = text();
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
        NotWritten.write(folder, List.of(new LearnedJson(learned.get(), choice.provenance(log))));
        terminal.println();
        terminal.println("Results in " + folder.path() + ": learn.json");
        return learned.get().isFitted() || written.isEmpty() ? ExitCode.DONE : ExitCode.NOT_WRITTEN;
    }

    /** What is not the scenario's is part of the question, and so of the folder's name. */
    private ResultFolder folder(Scenario scenario, FieldLog runs) {
        List<Object> names = new ArrayList<>(List.of("learn", runs.name()));
        new TreeSet<>(dailyKeys).forEach(it -> names.add("daily-" + it));
        gap.ifPresent(it -> names.add("gap-" + it));
        return new ResultFolder(out.resolve(choice.folderName(scenario, names.toArray())));
    }

    private ScenarioText text() {
        try {
            return new ScenarioText(SourceFiles.DISK.text(choice.file()), choice.changes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Set<String> daily(Understood understood) {
        List<String> keys = understood.scenario().sky().uncertainKeys();
        for (String key : dailyKeys) {
            require(
                    keys.contains(key),
                    "--daily: " + key + " is no uncertain input of the scenario; " + Spelling.advice(key, keys));
        }
        return new TreeSet<>(dailyKeys);
    }

    private double gapDb() {
        try {
            double gapDb = gap.isPresent() ? Quantity.decibels(gap.get()) : 0;
            require(gapDb >= 0 && gapDb <= MOST_GAP_DB, "--gap must be from 0 to 20 dB");
            return gapDb;
        } catch (WrongValue e) {
            throw new ParameterException(spec.commandLine(), "--gap: " + e.message() + "\n    " + e.remedy(), e);
        }
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
