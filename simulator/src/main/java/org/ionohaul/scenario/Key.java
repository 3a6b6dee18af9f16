package org.ionohaul.scenario;

import java.util.Optional;

/**
 * One key of a file, with all that its reader and its manual need.
 *
 * @param name how it is written
 * @param component the record component it fills, by which that record's limits find their key
 * @param kind what may stand after it
 * @param example a value as it could stand in a file; valid together with all other examples of its group
 * @param otherwise what holds when the key is left out; empty if it must be there or its absence has a meaning
 * @param meaning one sentence for the manual
 */
record Key<T>(String name, String component, Kind<T> kind, Object example, Optional<Object> otherwise, String meaning) {
    static <T> Key<T> of(String name, String component, Kind<T> kind, Object example, String meaning) {
        return new Key<>(name, component, kind, example, Optional.empty(), meaning);
    }

    Key<T> otherwise(Object value) {
        return new Key<>(name, component, kind, example, Optional.of(value), meaning);
    }
}
