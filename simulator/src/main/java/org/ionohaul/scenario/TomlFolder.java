package org.ionohaul.scenario;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A folder of scenario or mode files, each known by its file's name without the ending.
 *
 * @param path the folder; it need not exist
 * @param files where its files come from
 */
record TomlFolder(Path path, SourceFiles files) {
    private static final String ENDING = ".toml";
    private static final String SCENARIOS = "scenarios";

    /** The property in which the launcher says where the program, and with it its own scenarios, lies. */
    private static final String HOME = "ionohaul.home";

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
        return path.resolve(name.endsWith(ENDING) ? name : name + ENDING).normalize();
    }

    /** Returns a file that was named without its ending; the name as it is if it is no file's. */
    static Path named(Path file, SourceFiles files) {
        Path whole = file.resolveSibling(nameOf(file) + ENDING);
        return !files.exists(file) && files.exists(whole) ? whole : file;
    }

    private TomlFolder shipped(Path home) {
        return new TomlFolder(home.resolve(SCENARIOS), files);
    }

    /** Returns advice for someone who named a file that is not there: what to type instead. */
    String advice(Path missing) {
        List<TomlFolder> nearer = new ArrayList<>();
        Optional.ofNullable(System.getProperty(HOME)).ifPresent(it -> nearer.add(shipped(Path.of(it))));
        nearer.add(new TomlFolder(path.resolve(SCENARIOS), files));
        nearer.add(this);
        Map<String, Path> fileOf = new TreeMap<>();
        nearer.forEach(folder -> folder.names().forEach(name -> fileOf.put(name, folder.file(name))));
        return Spelling.nearest(nameOf(missing), fileOf.keySet())
                .map(name -> "did you mean \"" + fileOf.get(name) + "\"?")
                .orElseGet(() -> fileOf.isEmpty()
                        ? ""
                        : "there: "
                                + fileOf.values().stream().map(Path::toString).collect(Collectors.joining(", ")));
    }
}
