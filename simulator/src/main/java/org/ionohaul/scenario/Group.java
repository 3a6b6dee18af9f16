package org.ionohaul.scenario;

import java.util.List;
import java.util.stream.Stream;

/**
 * The keys that may stand together under one heading of a file.
 *
 * @param name the heading; empty for the top of the file
 * @param meaning one sentence for the manual
 * @param keys the keys, in the order of the manual
 * @param parts the headings below this one
 * @param isOpen whether more keys may stand here, depending on the value of one
 */
record Group(String name, String meaning, List<Key<?>> keys, List<Group> parts, boolean isOpen) {
    static Group of(String name, String meaning, Key<?>... keys) {
        return new Group(name, meaning, List.of(keys), List.of(), false);
    }

    Group with(Group... moreParts) {
        return new Group(
                name,
                meaning,
                keys,
                Stream.concat(parts.stream(), Stream.of(moreParts)).toList(),
                isOpen);
    }

    /** Returns the same group as far as it is known before the value is read on which its other keys depend. */
    Group open() {
        return new Group(name, meaning, keys, parts, true);
    }

    /**
     * Returns the keys but for some.
     *
     * <p>Told apart by name: how to compare whole records is put together at run time, and would delay every start.
     */
    List<Key<?>> keysBut(Key<?>... left) {
        return keys.stream()
                .filter(it -> Stream.of(left).noneMatch(other -> other.name().equals(it.name())))
                .toList();
    }

    /** Returns the headings below this one but for some, told apart as keys are. */
    List<Group> partsBut(Group... left) {
        return parts.stream()
                .filter(it -> Stream.of(left).noneMatch(other -> other.name().equals(it.name())))
                .toList();
    }

    /** Returns whether a name may stand under this heading. */
    boolean has(String other) {
        return keys.stream().anyMatch(it -> it.name().equals(other))
                || parts.stream().anyMatch(it -> it.name().equals(other));
    }

    /** Returns every name that may stand under this heading. */
    List<String> names() {
        return Stream.concat(keys.stream().map(Key::name), parts.stream().map(Group::name))
                .distinct()
                .toList();
    }
}
