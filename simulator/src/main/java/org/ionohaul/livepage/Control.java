package org.ionohaul.livepage;

import java.util.List;

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
record Control(
        String key, String label, String meaning, String written, List<String> choices, boolean isShared) {
    private static final String MODES = "modes";

    Control {
        choices = List.copyOf(choices);
    }

    /** Returns whether several of the choices are taken at once. */
    boolean isList() {
        return key.equals(MODES);
    }
}
