package org.ionohaul.livepage;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The demo made small: two modes, short files, few trials; in a folder of its own. */
public final class PageFixture {
    private static final Path SCENARIOS = Path.of("../scenarios");
    private static final List<String> MODES = List.of("patient-climber", "steady-wagon");

    private PageFixture() {}

    /** Writes the scenario and its modes, and returns the scenario's file. */
    public static Path write(Path folder, int trials) throws IOException {
        Files.createDirectories(folder.resolve("modes"));
        for (String mode : MODES) {
            Files.copy(
                    SCENARIOS.resolve("modes").resolve(mode + ".toml"),
                    folder.resolve("modes").resolve(mode + ".toml"));
        }
        String text = Files.readString(SCENARIOS.resolve("river-watch.toml"))
                .replace("trials = 1000", "trials = " + trials)
                .replace("38 kB", "3 kB")
                .replace(
                        "\"brisk-comb\", \"patient-climber\", \"slow-whistle\", \"steady-wagon\"",
                        "\"patient-climber\", \"steady-wagon\"");
        Path file = folder.resolve("small-watch.toml");
        Files.writeString(file, text);
        return file;
    }

    /** Returns what lies in a folder, with its content. */
    public static List<String> contents(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.sorted().map(PageFixture::described).toList();
        }
    }

    /** Returns the names of what lies in a folder. */
    public static List<String> names(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(Path::toString).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String described(Path file) {
        try {
            return file
                    + (Files.isRegularFile(file) ? " " + Files.readString(file).hashCode() : "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
