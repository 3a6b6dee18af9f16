package org.ionohaul.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.ionohaul.report.InputFile;
import org.ionohaul.report.Provenance;
import org.ionohaul.scenario.ScenarioReader;

/** The files that a scenario was read from, for the record. */
final class ScenarioFiles {
    private ScenarioFiles() {}

    /**
     * Returns where a scenario comes from: its own file first, then those of its modes.
     *
     * @param changes what the command line says instead of the files, by key
     */
    static Provenance provenance(Path file, Map<String, String> changes) {
        Path scenario = file.toAbsolutePath().normalize();
        List<InputFile> inputs = Stream.concat(
                        Stream.of(scenario), ScenarioReader.modeFiles(scenario, changes).stream())
                .map(it -> input(it, scenario.resolveSibling("").relativize(it)))
                .toList();
        return new Provenance(ProgramVersion.text(), inputs, changes);
    }

    /** Names are written with slashes on every system, so that results are the same bytes. */
    private static InputFile input(Path file, Path name) {
        try {
            return new InputFile(name.toString().replace('\\', '/'), Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
