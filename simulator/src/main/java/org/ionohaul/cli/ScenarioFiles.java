package org.ionohaul.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.report.InputFile;
import org.ionohaul.report.Provenance;
import org.ionohaul.scenario.Scenario;

/** The files that a scenario was read from, for the record. */
final class ScenarioFiles {
    private ScenarioFiles() {}

    /** Returns where the scenario came from: its own file first, then those of its modes. */
    static Provenance provenance(Path file, Scenario scenario) {
        List<InputFile> inputs = Stream.concat(
                        Stream.of(input(file, name(file))),
                        scenario.modes().stream()
                                .map(it -> "modes/" + it.name() + ".toml")
                                .map(it -> input(file.resolveSibling(it), it)))
                .toList();
        return new Provenance(ProgramVersion.text(), inputs);
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    private static InputFile input(Path file, String name) {
        try {
            return new InputFile(name, Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
