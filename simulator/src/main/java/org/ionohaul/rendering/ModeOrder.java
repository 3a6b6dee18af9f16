package org.ionohaul.rendering;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Which colour a mode has, the same in every picture and table: modes take the colours in order of their names, in whatever
 * order a scenario lists them. The page's script counts in the same way.
 *
 * @param names what people call the modes, in alphabetical order
 */
public record ModeOrder(List<String> names) {
    /** Sorts the names. */
    public ModeOrder {
        names = names.stream().sorted().toList();
    }

    /** Returns a mode's place, from 0; empty for any other name. */
    public OptionalInt of(String name) {
        return IntStream.range(0, names.size())
                .filter(i -> names.get(i).equals(name))
                .findFirst();
    }
}
