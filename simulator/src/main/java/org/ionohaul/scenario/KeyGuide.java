package org.ionohaul.scenario;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What the manual says of a key of scenario files.
 *
 * @param meaning one sentence
 * @param choices the names of which one must stand after it; empty if it is not a choice among names
 */
public record KeyGuide(String meaning, List<String> choices) {
    /** Copies the list. */
    public KeyGuide {
        choices = List.copyOf(choices);
    }

    /**
     * Returns what is said of a key; empty if there is no such key.
     *
     * @param key the full key; entries of repeated headings count from 1, as in {@code transfer.1.files.2.size}
     */
    public static Optional<KeyGuide> of(String key) {
        List<String> path = Arrays.stream(key.split("\\.", -1))
                .filter(it -> !it.matches("\\d+"))
                .toList();
        return path.isEmpty() ? Optional.empty() : of(ScenarioFormat.TOP, path);
    }

    static Optional<KeyGuide> of(Group group, List<String> path) {
        return path.size() == 1
                ? group.keys().stream()
                        .filter(it -> it.name().equals(path.get(0)))
                        .findFirst()
                        .map(it -> new KeyGuide(it.meaning(), it.kind().choices()))
                : group.parts().stream()
                        .filter(it -> it.name().equals(path.get(0)))
                        .findFirst()
                        .flatMap(it -> of(it, path.subList(1, path.size())));
    }
}
