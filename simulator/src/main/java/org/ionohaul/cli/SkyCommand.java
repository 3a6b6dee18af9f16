package org.ionohaul.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ionohaul.rendering.FolderName;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.sheet.SkyCsv;
import org.ionohaul.sheet.SkyPage;
import org.ionohaul.sheet.SkyText;
import org.ionohaul.trial.SkyView;
import org.ionohaul.trial.TrialSkies;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Shows one trial's sky. */
@Command(
        name = "sky",
        description = {
            "Shows one trial's sky as a meter at each end would, so that you can see whether the file says what you meant.",
            "",
            "Prints a strip of SNR for each end, and how much of the time each data rate has too little. With --out, also"
                    + " writes sky.csv and, with the picture, sky.html.",
            ""
        },
        mixinStandardHelpOptions = true)
final class SkyCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private final ScenarioChoice choice = new ScenarioChoice();

    @Option(
            names = "--trial",
            paramLabel = "N",
            description = "Which trial, counted from 0; ${DEFAULT-VALUE} if not given.",
            converter = WholeConverter.class,
            defaultValue = "0")
    private long trial;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "Seed of all chance, instead of what the file says.",
            converter = WholeConverter.class)
    private Optional<Long> seed = Optional.empty();

    @Option(
            names = "--minutes",
            paramLabel = "M",
            description =
                    "How long from pressing send, in minutes or with a unit; the scenario's horizon if not given.",
            converter = MinutesConverter.class)
    private Optional<Double> lengthSeconds = Optional.empty();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where to put a folder with the files, named after scenario, seed and trial.")
    private Optional<Path> out = Optional.empty();

    @Override
    public Integer call() throws ScenarioProblems, NotWritten {
        Scenario scenario =
                choice.read(seed.map(it -> Map.of("seed", it.toString())).orElse(Map.of()));
        SkyView view = SkyView.of(scenario, trial(), new TrialSkies(scenario).sky(trial), lengthSeconds(scenario));
        PrintWriter terminal = spec.commandLine().getOut();
        new SkyText(view).lines().forEach(terminal::println);
        if (out.isPresent()) {
            ResultFolder folder =
                    new ResultFolder(out.get().resolve(FolderName.of(scenario.name(), scenario.seed(), "sky", trial)));
            write(view, folder);
            terminal.println();
            terminal.println("Written to " + folder.path() + ": sky.csv, sky.html");
        }
        return ExitCode.DONE;
    }

    private long trial() {
        if (trial < 0) {
            throw new ParameterException(spec.commandLine(), "--trial must not be negative: " + trial);
        }
        return trial;
    }

    private double lengthSeconds(Scenario scenario) {
        double seconds = lengthSeconds.orElse(scenario.horizonSeconds());
        if (!(seconds >= 1 && seconds <= 7 * 86400)) {
            throw new ParameterException(
                    spec.commandLine(), "--minutes must be from a second to a week: " + seconds / 60);
        }
        return seconds;
    }

    private static void write(SkyView view, ResultFolder folder) throws NotWritten {
        NotWritten.write(folder, List.of(new SkyCsv(view), SkyPage.of(view, Provenance.programVersion())));
    }
}
