package org.ionohaul.scenario;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A small scenario in a folder of its own, made of one text a heading, so that a test can change just one of them.
 *
 * @param folder where its files are written
 * @param parts the text under each heading
 */
record WrittenScenario(Path folder, Map<String, String> parts) {
    static WrittenScenario in(Path folder) {
        return new WrittenScenario(
                folder, Map.of("", """
                        title = "A test"
                        horizon = "1 h"
                        clock = "18:00"
                        distance = "300 km"
                        modes = ["brisk-comb"]
                        """, "[[transfer]]", """
                        name = "note"
                        files = [{ name = "note", size = "1 kB" }]
                        directions = ["upload"]
                        """, "[near]", """
                        name = "Near"
                        snr = "14 dB"
                        station = { hang = "20 ms", relay = "10 ms", recovery = "20 ms" }
                        """, "[far]", """
                        name = "Far"
                        snr = "11 dB"
                        station = { hang = "20 ms", relay = "10 ms", recovery = "20 ms" }
                        """, "[sky]", """
                        condition = "moderate"
                        """));
    }

    /** Returns the scenario with the text under a heading replaced. */
    WrittenScenario with(String heading, String text) {
        Map<String, String> changed = new TreeMap<>(parts);
        changed.put(heading, text);
        return new WrittenScenario(folder, changed);
    }

    /** Returns the scenario with a text under a heading replaced by another. */
    WrittenScenario replacing(String heading, String old, String fresh) {
        String text = parts.getOrDefault(heading, "");
        if (!text.contains(old)) {
            throw new IllegalArgumentException(heading + " has no " + old);
        }
        return with(heading, text.replace(old, fresh));
    }

    /** Writes the files and reads them. */
    Scenario read() throws ScenarioProblems {
        return ScenarioReader.read(written());
    }

    /** Writes the files and returns what is wrong with them; nothing if they can be used. */
    List<Problem> problems() {
        return problems(Map.of());
    }

    /** Returns the same when some keys are set on the command line. */
    List<Problem> problems(Map<String, String> changes) {
        try {
            ScenarioReader.read(written(), changes);
            return List.of();
        } catch (ScenarioProblems e) {
            return e.problems();
        }
    }

    /** Writes the files and returns what is told of them as unusual when some keys are set on the command line. */
    List<String> warnings(Map<String, String> changes) throws ScenarioProblems {
        return messages(
                ScenarioReader.understand(SourceFiles.DISK, written(), changes).warnings());
    }

    static List<String> messages(List<Warning> warnings) {
        return warnings.stream().map(it -> it.told().message()).toList();
    }

    /** Writes the files and returns the scenario's. */
    Path written() {
        StringBuilder text = new StringBuilder(parts.getOrDefault("", ""));
        new TreeMap<>(parts).forEach((heading, part) -> {
            if (!heading.isEmpty()) {
                text.append(heading).append('\n').append(part).append('\n');
            }
        });
        try {
            Path modes = Files.createDirectories(folder.resolve("modes"));
            for (Path mode : ShippedFilesTest.modeFiles()) {
                Files.writeString(modes.resolve(mode.getFileName()), Files.readString(mode));
            }
            return Files.writeString(folder.resolve("test.toml"), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
