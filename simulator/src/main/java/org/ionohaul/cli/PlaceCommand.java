package org.ionohaul.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ionohaul.fieldlog.FieldLog;
import org.ionohaul.fieldlog.FieldLogReader;
import org.ionohaul.placing.LogPlacement;
import org.ionohaul.placing.PlacementJson;
import org.ionohaul.placing.PlacementText;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Understood;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Lays runs on the air beside the simulation. */
@Command(
        name = "place",
        description = {
            "Lays runs on the air beside the simulation: says of each logged run where it lies among simulated ones, and of all"
                    + " together whether the model is too hopeful, too gloomy or too sure.",
            "",
            "Each run is simulated as it was: its mode, direction and size, at its time of day, at the level that was read"
                    + " during it where there is one (marked * in the table). How a log is written stands in"
                    + " scenarios/README.md.",
            "",
            "Prints a summary and writes a folder of results: place.json.",
            ""
        },
        mixinStandardHelpOptions = true)
final class PlaceCommand implements Callable<Integer> {
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
            names = "--out",
            paramLabel = "DIR",
            description = "Where to put the folder of results; ${DEFAULT-VALUE} if not given.",
            defaultValue = "results")
    private Path out = Path.of("results");

    PlaceCommand(Simulation simulation) {
        this.simulation = simulation;
    }

    @Override
    public Integer call() throws ScenarioProblems, NotWritten {
        Understood understood = choice.understand(simulation.changes());
        List<String> modes =
                understood.scenario().modes().stream().map(Mode::name).toList();
        FieldLog runs = FieldLogReader.read(SourceFiles.DISK, log, modes);
        ResultFolder folder =
                new ResultFolder(out.resolve(choice.folderName(understood.scenario(), "place", runs.name())));
        NotWritten.probe(folder);
        Optional<LogPlacement> placement = simulation.inPool(
                "Simulating", understood.scenario().trials(), pool -> LogPlacement.of(understood, runs, pool));
        if (placement.isEmpty()) {
            spec.commandLine().getErr().println("Interrupted before the first trial was done.");
            return ExitCode.PARTIAL;
        }
        if (placement.get().isPartial()) {
            show(placement.get(), folder.partial());
            return ExitCode.PARTIAL;
        }
        show(placement.get(), folder);
        NotWritten.delete(folder.partial());
        return ExitCode.DONE;
    }

    private void show(LogPlacement placement, ResultFolder folder) throws NotWritten {
        PrintWriter terminal = spec.commandLine().getOut();
        new PlacementText(placement).lines().forEach(terminal::println);
        terminal.flush();
        NotWritten.write(folder, List.of(new PlacementJson(placement, choice.provenance(log))));
        terminal.println();
        terminal.println("Written to " + folder.path() + ": place.json");
    }
}
