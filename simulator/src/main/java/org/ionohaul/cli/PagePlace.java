package org.ionohaul.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.BindException;
import java.net.URI;
import java.util.Optional;
import org.ionohaul.livepage.ServedPage;
import org.ionohaul.scenario.ScenarioProblems;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Where a page is served on this machine, and how its user gets there. */
final class PagePlace {
    private static final int USUAL_PORT = 8714;
    private static final int LARGEST_PORT = 65_535;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

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

    /** How a page is served at a port. */
    interface Serving {
        ServedPage at(int port) throws ScenarioProblems, IOException;
    }

    /** Serves a page until an interruption comes. */
    int serve(Serving serving, Runnable await) throws ScenarioProblems, IOException {
        port.filter(it -> it < 0 || it > LARGEST_PORT).ifPresent(it -> {
            throw new ParameterException(spec.commandLine(), "--port must be from 0 to " + LARGEST_PORT + ": " + it);
        });
        try (ServedPage page = served(serving)) {
            tell(page.address());
            if (!isWithoutBrowser) {
                Browser.open(page.address());
            }
            await.run();
        }
        return ExitCode.DONE;
    }

    private ServedPage served(Serving serving) throws ScenarioProblems, IOException {
        try {
            return serving.at(port.orElse(USUAL_PORT));
        } catch (BindException e) {
            if (port.isEmpty()) {
                return serving.at(0);
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
