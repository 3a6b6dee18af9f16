package org.ionohaul.rendering;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.picture.Legend;

/**
 * Which colour a mode has, the same in every picture and table: modes take the colours in order of their names, in whatever
 * order a scenario lists them. Line patterns go with the colours; the page's style sheet has both.
 *
 * @param names what people call the modes, in alphabetical order
 * @param palette these and maybe others that have colours beside them, in order of the colours
 */
public record ModeOrder(List<String> names, List<String> palette) {
    private static final int COLOURS = 7;
    private static final int PATTERNS = 4;

    /** Sorts the names. */
    public ModeOrder {
        names = names.stream().sorted().toList();
        palette = List.copyOf(palette);
    }

    /** Orders modes that have all the colours. */
    public ModeOrder(List<String> names) {
        this(names, names.stream().sorted().toList());
    }

    /** Returns the order with others behind: the colours of these stay. */
    public ModeOrder with(List<String> others) {
        return new ModeOrder(
                Stream.concat(names.stream(), others.stream()).distinct().toList(),
                Stream.concat(palette.stream(), others.stream().sorted())
                        .distinct()
                        .toList());
    }

    /** Returns some of the modes, each in the colour that it has among all; one that is none of them comes behind. */
    public ModeOrder among(List<String> shown) {
        return new ModeOrder(shown, with(shown).palette());
    }

    /** Returns the styles of a mode, its colour and its line pattern, such as {@code m1 d1}; empty for any other name. */
    public String style(String name) {
        OptionalInt place = of(name);
        return place.isPresent() ? "m" + place.getAsInt() % COLOURS + " d" + place.getAsInt() % PATTERNS : "";
    }

    /** Returns the keys of a legend of lines. */
    public List<Legend.Key> lines() {
        return names.stream()
                .map(it -> new Legend.Key(Legend.Sign.LINE, "line " + style(it), it))
                .toList();
    }

    /** Returns the place of a mode's colour, from 0; empty for any other name. */
    public OptionalInt of(String name) {
        return IntStream.range(0, palette.size())
                .filter(i -> palette.get(i).equals(name))
                .findFirst();
    }
}
