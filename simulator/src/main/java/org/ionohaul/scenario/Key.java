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
 * @param usual what nearly everybody's values lie within; empty if nothing is odd
 */
record Key<T>(
        String name,
        String component,
        Kind<T> kind,
        Object example,
        Optional<Object> otherwise,
        String meaning,
        Optional<Usual> usual) {
    static <T> Key<T> of(String name, String component, Kind<T> kind, Object example, String meaning) {
        return new Key<>(name, component, kind, example, Optional.empty(), meaning, Optional.empty());
    }

    Key<T> otherwise(Object value) {
        return new Key<>(name, component, kind, example, Optional.of(value), meaning, usual);
    }

    /** Returns the same key with a range outside of which a value is odd, written as in a file. */
    Key<T> usually(String low, String high) {
        return new Key<>(
                name,
                component,
                kind,
                example,
                otherwise,
                meaning,
                Optional.of(new Usual(number(low), number(high), low, high)));
    }

    private double number(String text) {
        try {
            return Usual.number(kind.read(text)).orElseThrow();
        } catch (WrongValue e) {
            throw new IllegalStateException("bad range of key " + name + ": " + e.message(), e);
        }
    }

    /** Returns what is odd about a value; empty if nothing is. */
    Optional<String> oddity(Object value) {
        return usual.flatMap(it -> it.oddity(value));
    }
}
