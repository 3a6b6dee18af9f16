package org.ionohaul.study;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A run that is still to be done: what to change in the scenario for it.
 *
 * @param changes values by key, in the order of the keys; empty for the scenario as it stands
 */
public record PlannedPoint(Map<String, String> changes) {
    /** Copies the map, keeping its order. */
    public PlannedPoint {
        changes = Collections.unmodifiableMap(new LinkedHashMap<>(changes));
    }

    /** Returns the values, one a key that is changed. */
    public List<String> values() {
        return List.copyOf(changes.values());
    }
}
