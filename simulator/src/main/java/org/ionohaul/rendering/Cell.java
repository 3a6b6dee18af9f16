package org.ionohaul.rendering;

import java.util.List;
import java.util.regex.Pattern;

/**
 * A cell of a table.
 *
 * @param text what it says
 * @param detail what it adds in small print, such as an interval; may be empty
 */
public record Cell(String text, String detail) {
    /** Where a range is broken: {@code 9 min 41 s to 10 min 5 s}, not {@code 6.9 to 17.1 dB}. */
    private static final Pattern BETWEEN_LENGTHS = Pattern.compile("(?<=\\p{Alpha}) (?=to )");

    /** Returns a cell without small print. */
    public static Cell of(String text) {
        return new Cell(text, "");
    }

    /** Returns the pieces of the small print that stand below each other where there is no room for it in one line. */
    public List<String> pieces() {
        return detail.isEmpty() ? List.of() : List.of(BETWEEN_LENGTHS.split(detail));
    }

    /** Returns all that it says in one line. */
    public String line() {
        return detail.isEmpty() ? text : text + " (" + detail + ")";
    }
}
