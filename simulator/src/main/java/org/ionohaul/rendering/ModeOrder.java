package org.ionohaul.rendering;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Which colour a mode has, the same in every picture and table: modes take the colours in order of their names, in whatever
 * order a scenario lists them. Line patterns go with the colours; the page's style sheet has both.
 *
 * @param names what people call the modes, in alphabetical order
 */
public record ModeOrder(List<String> names) {
    private static final int COLOURS = 7;
    private static final int PATTERNS = 4;

    /** Sorts the names. */
    public ModeOrder {
        names = names.stream().sorted().toList();
    }

    /** Returns the styles of a mode, its colour and its line pattern, such as {@code m1 d1}; empty for any other name. */
    public String style(String name) {
        OptionalInt place = of(name);
        return place.isPresent() ? "m" + place.getAsInt() % COLOURS + " d" + place.getAsInt() % PATTERNS : "";
    }

    /** Returns a mode's place, from 0; empty for any other name. */
    public OptionalInt of(String name) {
        return IntStream.range(0, names.size())
                .filter(i -> names.get(i).equals(name))
                .findFirst();
    }
}
