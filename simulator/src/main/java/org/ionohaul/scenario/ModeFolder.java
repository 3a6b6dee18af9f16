package org.ionohaul.scenario;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * A folder of mode files, where a mode's name is its file's name without the ending.
 *
 * @param path the folder; it need not exist
 */
record ModeFolder(Path path) {
    private static final String ENDING = ".toml";

    /** Returns the folder of mode files that belongs to a scenario file. */
    static ModeFolder beside(Path scenarioFile) {
        return new ModeFolder(scenarioFile.resolveSibling("modes"));
    }

    /** Returns a file's name without its ending. */
    static String nameOf(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    }

    /** Returns the names of the modes in it, in alphabetical order. */
    List<String> names() {
        if (!Files.isDirectory(path)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(path)) {
            return files.filter(file -> file.toString().endsWith(ENDING))
                    .map(ModeFolder::nameOf)
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(path + " can't be read", e);
        }
    }

    /** Returns the file that describes a mode. */
    Path file(String name) {
        return path.resolve(name + ENDING);
    }
}
