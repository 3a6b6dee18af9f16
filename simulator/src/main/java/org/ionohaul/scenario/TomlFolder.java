package org.ionohaul.scenario;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * A folder of scenario or mode files, each known by its file's name without the ending.
 *
 * @param path the folder; it need not exist
 * @param files where its files come from
 */
record TomlFolder(Path path, SourceFiles files) {
    private static final String ENDING = ".toml";

    /** Returns the folder in which a file lies. */
    static TomlFolder of(Path file, SourceFiles files) {
        return new TomlFolder(file.resolveSibling(""), files);
    }

    /** Returns the folder of mode files that belongs to a scenario file. */
    static TomlFolder ofModesBeside(Path scenarioFile, SourceFiles files) {
        return new TomlFolder(scenarioFile.resolveSibling("modes"), files);
    }

    /** Returns a file's name without its ending. */
    static String nameOf(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    }

    /** Returns the names of the files in it, in alphabetical order; none if it can't be read. */
    List<String> names() {
        try {
            return files.in(path).stream()
                    .filter(file -> file.toString().endsWith(ENDING))
                    .map(TomlFolder::nameOf)
                    .sorted()
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    /**
     * Returns the file of a name, which may be a path from here.
     *
     * @throws java.nio.file.InvalidPathException if it can't be a path
     */
    Path file(String name) {
        return path.resolve(name + ENDING).normalize();
    }

    /** Returns advice for someone who named a file that is not there. */
    String advice(Path missing) {
        return Spelling.advice(nameOf(missing), names());
    }
}
