package org.ionohaul.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.ionohaul.rendering.FolderName;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.sheet.LossCsv;
import org.ionohaul.sheet.ModeSheet;
import org.ionohaul.trial.ModeBench;
import org.ionohaul.trial.ModeCard;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows what modes there are, or one mode's data sheet. */
@Command(
        name = "mode",
        description = {
            "Lists the modes, or measures one and shows its data sheet: data rates, airtimes, what SNR each data rate needs on a"
                    + " flat, a moderate and a poor path, how long undisturbed transfers take.",
            "",
            "Also writes a folder with the sheet as card.txt and, with pictures of the frame loss against SNR, card.html; the"
                    + " losses are in loss.csv.",
            ""
        },
        mixinStandardHelpOptions = true)
final class ModeCommand implements Callable<Integer> {
    private static final String ENDING = ".toml";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "NAME",
            arity = "0..*",
            description = "Modes by name, or mode files ending in .toml; lists all modes if none is given.")
    private List<String> names = List.of();

    @Option(
            names = "--modes",
            paramLabel = "DIR",
            description = "The folder of mode files; ${DEFAULT-VALUE} if not given.",
            defaultValue = "scenarios/modes")
    private Path folder = Path.of("scenarios", "modes");

    @Mixin
    private ResultsPlace out = new ResultsPlace();

    @Override
    public Integer call() throws ScenarioProblems, NotWritten {
        if (names.isEmpty()) {
            list();
        }
        for (String name : names) {
            show(ScenarioReader.readMode(file(name)));
        }
        return ExitCode.DONE;
    }

    private Path file(String name) {
        Path asPath = Path.of(name);
        return Files.exists(asPath) && name.endsWith(ENDING) ? asPath : ScenarioReader.named(folder.resolve(name));
    }

    private void list() throws ScenarioProblems {
        PrintWriter terminal = spec.commandLine().getOut();
        List<String> all = ScenarioReader.modeNames(folder);
        if (all.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "There are no mode files in " + folder + "; name their folder with --modes.");
        }
        for (String name : all) {
            Mode mode = ScenarioReader.readMode(folder.resolve(name + ENDING));
            terminal.println(name + ": " + mode.title() + ", " + dataRates(mode));
            terminal.println("    " + mode.about());
        }
    }

    private static String dataRates(Mode mode) {
        return mode.dataRates().size() == 1 ? "1 data rate" : mode.dataRates().size() + " data rates";
    }

    private void show(Mode mode) throws NotWritten {
        ModeCard card = new ModeBench(mode).card();
        ModeSheet sheet = new ModeSheet(card);
        PrintWriter terminal = spec.commandLine().getOut();
        sheet.lines().forEach(terminal::println);
        terminal.flush();
        ResultFolder results = out.folder(FolderName.of("mode", mode.name()));
        NotWritten.write(results, List.of(sheet, new LossCsv(card), sheet.page(Provenance.programVersion())));
        terminal.println();
        terminal.println("Written to " + results.path() + ": card.txt, card.html, loss.csv");
        terminal.println();
    }
}
