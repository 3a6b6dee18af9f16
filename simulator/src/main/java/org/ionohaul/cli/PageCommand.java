package org.ionohaul.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.ionohaul.livepage.LivePage;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Serves a page on which a scenario's quantities are changed while its trials come in. */
@Command(
        name = "page",
        description = {
            "Opens a page in the browser on which the scenario's quantities can be changed, alone or two settings side by"
                    + " side under the same skies; answers and the race sharpen while trials come in.",
            "",
            "The page is served on this machine alone, needs no network and writes nothing; what is asked stands in its"
                    + " address, so that it can be reloaded and bookmarked. \"Save as scenario file\" downloads the setting."
                    + " Ctrl-C ends it.",
            ""
        },
        mixinStandardHelpOptions = true)
final class PageCommand implements Callable<Integer> {
    private final Interruption interruption;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The scenario file; its modes lie in the folder modes beside it.")
    private Path file = Path.of("");

    @Mixin
    private final PagePlace place = new PagePlace();

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "How many threads to use; all processors if not given. Does not change results.",
            converter = CountConverter.class)
    private int threads = Runtime.getRuntime().availableProcessors();

    PageCommand(Interruption interruption) {
        this.interruption = interruption;
    }

    @Override
    public Integer call() throws ScenarioProblems, IOException {
        Simulation.requireThreads(threads, spec);
        Path scenario = ScenarioReader.named(file);
        return place.serve(port -> LivePage.serve(scenario, port, threads), interruption::await);
    }
}
