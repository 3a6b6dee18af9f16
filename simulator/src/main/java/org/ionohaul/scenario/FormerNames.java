package org.ionohaul.scenario;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** Keys and headings that had other names in earlier versions: a file that still has them is told the new ones. */
final class FormerNames {
    private static final Map<String, String> NOW =
            Map.of("level", "rate", "ladder", "rate-policy", "start-level", "start-rate");

    private FormerNames() {}

    /**
     * Returns what a name is called now, as one writes it; empty if it never had another.
     *
     * @param name the name that stands in the file
     * @param value what stands under it
     */
    static Optional<String> now(String name, Object value) {
        return Optional.ofNullable(NOW.get(name)).map(now -> written(now, value));
    }

    /** Returns a full key in which all names are those of now. */
    static String now(String fullKey) {
        StringBuilder key = new StringBuilder();
        for (String name : fullKey.split("\\.", -1)) {
            key.append(key.isEmpty() ? "" : ".").append(NOW.getOrDefault(name, name));
        }
        return key.toString();
    }

    /** Returns whether one of the names is a former one of this. */
    static boolean areOf(String name, Set<String> names) {
        return names.stream().anyMatch(former -> name.equals(NOW.get(former)));
    }

    private static String written(String now, Object value) {
        if (value instanceof TomlTable) {
            return "[" + now + "]";
        }
        return value instanceof TomlArray array && !array.isEmpty() && array.get(0) instanceof TomlTable
                ? "[[" + now + "]]"
                : now;
    }
}
