package org.ionohaul.livepage;

import java.util.List;
import java.util.regex.Pattern;

/**
 * A quantity of the scenario that can be changed on the page.
 *
 * @param key its full key
 * @param label what people call it
 * @param meaning what the manual says of it
 * @param written what stands in the file
 * @param choices the names of which one must be taken; empty if it is typed
 * @param isShared whether both settings have the same value, so that they stay comparable
 */
record Control(String key, String label, String meaning, String written, List<String> choices, boolean isShared) {
    private static final Pattern NAME = Pattern.compile("[\"']([^\"']*)[\"']");
    private static final String MODES = "modes";

    Control {
        choices = List.copyOf(choices);
    }

    /** Returns whether a value may be asked for: modes only by the names that are offered, never by a path. */
    boolean allows(String value) {
        return !isList() || names(value).stream().allMatch(choices::contains);
    }

    /** Returns the names in a list as files write it. */
    static List<String> names(String list) {
        return NAME.matcher(list).results().map(it -> it.group(1)).toList();
    }

    /** Returns whether several of the choices are taken at once. */
    boolean isList() {
        return key.equals(MODES);
    }
}
