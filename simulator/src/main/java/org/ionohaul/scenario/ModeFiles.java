package org.ionohaul.scenario;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The mode files that a scenario names, with the values that replace some of theirs.
 *
 * @param folder where they lie
 * @param overrides all values that replace others, by full key
 * @param notes where problems and warnings go
 */
record ModeFiles(TomlFolder folder, Map<String, String> overrides, Notes notes) {
    private static final String NAME_REMEDY =
            "rename the file: at most 100 characters, all of them shown, the first none of = + - @";

    /** What the key of a mode begins with, before the mode's name. */
    static final String PREFIX = "modes.";

    /**
     * What reading a mode file comes to.
     *
     * @param mode the mode; worthless if there is a problem
     * @param problems what is wrong
     * @param warnings what is odd
     */
    record Read(Mode mode, List<Problem> problems, List<Warning> warnings) {
        static Read of(Path file, SourceFiles files, Map<String, String> overrides) {
            Notes notes = new Notes();
            Mode mode = read(file, files, overrides, notes);
            return new Read(mode, notes.problems(), notes.warnings());
        }
    }

    /** Returns one mode from its file; worthless if that made a problem. */
    static Mode read(Path file, SourceFiles files, Map<String, String> overrides, Notes notes) {
        String name = TomlFolder.nameOf(file);
        Document document = Document.open(file, files, overrides, PREFIX + name + ".", notes)
                .unlessRather(
                        ScenarioFormat.TOP,
                        NetFormat.TOP,
                        "describes a net of stations, not a mode",
                        "ionohaul net " + file + " says how its stations fare")
                .unlessRather(
                        ModeFormat.TOP,
                        ScenarioFormat.TOP,
                        "is a scenario, not a mode file",
                        "ionohaul check " + file + " says what it means; modes lie in the folder modes beside it");
        Mode mode = ModeReader.read(name, document);
        document.refuseUnusedOverrides();
        return mode;
    }

    /** Returns the files that a scenario names, those left out that do not exist. */
    List<Path> filesNamedIn(Section top) {
        return top.get(ScenarioFormat.MODES).stream()
                .flatMap(entry -> file(entry).stream())
                .toList();
    }

    /** Returns the modes that a scenario names; worthless if there was a problem. */
    List<Mode> namedIn(Section top) {
        List<Mode> modes = new ArrayList<>();
        Set<String> names = new HashSet<>();
        List<String> entries = top.get(ScenarioFormat.MODES);
        for (int i = 0; i < entries.size(); i++) {
            Optional<Path> file = file(entries.get(i));
            if (file.isEmpty()) {
                refuse(
                        top,
                        i,
                        "there is no mode file " + Kind.shown(entries.get(i)) + " in " + folder.path(),
                        Spelling.advice(entries.get(i), folder.names()));
            } else if (!names.add(TomlFolder.nameOf(file.get()))) {
                refuse(top, i, Kind.shown(entries.get(i)) + " is named twice", "");
            } else if (!Kind.name().canRead(TomlFolder.nameOf(file.get()))) {
                refuse(top, i, Kind.shown(entries.get(i)) + " is no name that may stand in a table", NAME_REMEDY);
            } else {
                modes.add(read(top, i, file.get()));
            }
        }
        refuseOverridesOfOthers(names);
        return modes;
    }

    /**
     * Returns a mode that a scenario names. What is wrong with a file outside the scenario's own folder is not told in full:
     * a scenario from somebody else could ask for any file, and what it holds would stand in the messages.
     */
    private Mode read(Section top, int index, Path file) {
        Read found = RememberedFiles.mode(folder.files(), file, overridesOf(TomlFolder.nameOf(file)));
        boolean isTold = isNearby(file);
        if (!found.problems().isEmpty() && !isTold) {
            refuse(
                    top,
                    index,
                    "the file outside the scenario's folder, " + file + ", is no mode in order",
                    "ionohaul mode " + file + " tells what is wrong with it");
        }
        found.problems().stream()
                .filter(problem -> isTold || problem.file().equals(Document.OVERRIDES))
                .forEach(notes::add);
        found.warnings().forEach(notes::add);
        return found.mode();
    }

    private boolean isNearby(Path file) {
        return folder.files()
                .isWithin(folder.path().toAbsolutePath().normalize().resolveSibling(""), file);
    }

    /** Adds a problem unless the list of modes is just the stand-in for one that can't be read. */
    private static void refuse(Section top, int index, String message, String remedy) {
        if (top.isReadable(ScenarioFormat.MODES)) {
            top.problemOfEntry(ScenarioFormat.MODES, index, message, remedy);
        }
    }

    private Optional<Path> file(String entry) {
        try {
            return Optional.of(folder.file(entry)).filter(folder.files()::isFile);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private Map<String, String> overridesOf(String mode) {
        String prefix = PREFIX + mode + ".";
        Map<String, String> own = new TreeMap<>();
        overrides.forEach((key, value) -> {
            if (key.startsWith(prefix)) {
                own.put(key.substring(prefix.length()), value);
            }
        });
        return own;
    }

    private void refuseOverridesOfOthers(Set<String> modes) {
        for (String key : overrides.keySet()) {
            if (key.startsWith(PREFIX) && modes.stream().noneMatch(mode -> key.startsWith(PREFIX + mode + "."))) {
                String remedy = "modes: " + String.join(", ", new TreeSet<>(modes));
                notes.add(new Problem(Document.OVERRIDES, 0, 0, key, "is a key of no mode in this scenario", remedy));
            }
        }
    }
}
