package org.ionohaul.cli;

import java.nio.file.Path;
import org.ionohaul.rendering.ResultFolder;
import picocli.CommandLine.Option;

/** Where the folder of results goes. */
final class ResultsPlace {
    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "Where to put the folder of results, named after what is in it; ${DEFAULT-VALUE} if not given.",
            defaultValue = "results")
    private Path out = Path.of("results");

    /**
     * Returns the folder.
     *
     * @param name its name
     */
    ResultFolder folder(String name) {
        return new ResultFolder(out.resolve(name));
    }
}
