package org.ionohaul.rendering;

/**
 * A cell of a table.
 *
 * @param text what it says
 * @param detail what it adds in small print, such as an interval; may be empty
 */
public record Cell(String text, String detail) {
    /** Returns a cell without small print. */
    public static Cell of(String text) {
        return new Cell(text, "");
    }

    /** Returns all that it says in one line. */
    public String line() {
        return detail.isEmpty() ? text : text + " (" + detail + ")";
    }
}
