package org.ionohaul.rendering;

import java.util.List;

/**
 * A table as content, whatever it will be drawn on.
 *
 * @param caption what it shows
 * @param heads heads of the columns, the first that of the rows' names
 * @param rows the rows, each with one cell a head; its first cell is the row's name
 */
public record Table(String caption, List<Cell> heads, List<List<Cell>> rows) {
    /** No table. */
    public static final Table NONE = new Table("", List.of(), List.of());

    /** Copies the lists and checks that each row fits. */
    public Table {
        heads = List.copyOf(heads);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<Cell> row : rows) {
            if (row.size() != heads.size()) {
                throw new IllegalArgumentException("a row of " + row.size() + " cells under " + heads.size());
            }
        }
    }

    /** Returns whether there is nothing but heads. */
    public boolean isEmpty() {
        return rows.isEmpty();
    }
}
