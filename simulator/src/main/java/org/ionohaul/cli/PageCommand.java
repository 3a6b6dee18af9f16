package org.ionohaul.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.BindException;
import java.net.URI;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ionohaul.livepage.LivePage;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
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
    private static final int USUAL_PORT = 8714;
    private static final int LARGEST_PORT = 65_535;

    private final Interruption interruption;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The scenario file; its modes lie in the folder modes beside it.")
    private Path file = Path.of("");

    @Option(
            names = "--port",
            paramLabel = "N",
            description =
                    "Where to serve the page on 127.0.0.1, 0 for any free port; if not given, 8714, so that bookmarks"
                            + " last, or any if that is taken.",
            converter = CountConverter.class)
    private Optional<Integer> port = Optional.empty();

    @Option(names = "--no-browser", description = "Opens no browser; type the address that is printed.")
    private boolean isWithoutBrowser;

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
        port.filter(it -> it < 0 || it > LARGEST_PORT).ifPresent(it -> {
            throw new ParameterException(spec.commandLine(), "--port must be from 0 to " + LARGEST_PORT + ": " + it);
        });
        Simulation.requireThreads(threads, spec);
        try (LivePage page = page()) {
            tell(page.address());
            if (!isWithoutBrowser) {
                Browser.open(page.address());
            }
            interruption.await();
        }
        return ExitCode.DONE;
    }

    private LivePage page() throws ScenarioProblems, IOException {
        Path scenario = ScenarioReader.named(file);
        try {
            return LivePage.serve(scenario, port.orElse(USUAL_PORT), threads);
        } catch (BindException e) {
            if (port.isEmpty()) {
                return LivePage.serve(scenario, 0, threads);
            }
            throw new ParameterException(
                    spec.commandLine(),
                    "--port " + port.get() + " can't be had: " + e.getMessage() + "; --port 0 takes any that is free",
                    e);
        }
    }

    private void tell(URI address) {
        PrintWriter terminal = spec.commandLine().getOut();
        terminal.println("The page is at " + address + " for this machine alone. Ctrl-C ends it.");
        terminal.flush();
    }
}
