package org.ionohaul.rendering;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A table on a terminal: columns as wide as they must be, names to the left, figures to the right, small print on a line
 * of its own. Columns that do not fit beside the others come in a further block below.
 */
public final class TextTable {
    private static final String GAP = "  ";

    private final Table table;

    /** Prepares a table for a terminal. */
    public TextTable(Table table) {
        this.table = table;
    }

    /** Returns the lines, none longer than asked unless a single column is. */
    public List<String> lines(int mostCharacters) {
        List<String> lines = new ArrayList<>();
        List<Integer> block = new ArrayList<>();
        int used = width(0);
        for (int column = 1; column < table.heads().size(); column++) {
            int more = GAP.length() + width(column);
            if (!block.isEmpty() && used + more + GAP.length() > mostCharacters) {
                addBlock(lines, block);
                block.clear();
                used = width(0);
            }
            block.add(column);
            used += more;
        }
        addBlock(lines, block);
        return lines;
    }

    private void addBlock(List<String> lines, List<Integer> columns) {
        if (!lines.isEmpty()) {
            lines.add("");
        }
        addRow(lines, table.heads(), columns);
        int width = GAP.length()
                + width(0)
                + columns.stream().mapToInt(it -> GAP.length() + width(it)).sum();
        lines.add(GAP + "-".repeat(width - GAP.length()));
        table.rows().forEach(row -> addRow(lines, row, columns));
    }

    private void addRow(List<String> lines, List<Cell> row, List<Integer> columns) {
        lines.add(line(row.stream().map(Cell::text).toList(), columns));
        List<String> details = row.stream().map(Cell::detail).toList();
        if (columns.stream().anyMatch(it -> !details.get(it).isEmpty())) {
            lines.add(line(details, columns));
        }
    }

    private String line(List<String> cells, List<Integer> columns) {
        StringBuilder line = new StringBuilder(GAP).append(cells.get(0)).append(blanks(0, cells));
        for (int column : columns) {
            line.append(GAP).append(blanks(column, cells)).append(cells.get(column));
        }
        return line.toString().stripTrailing();
    }

    private String blanks(int column, List<String> cells) {
        return " ".repeat(width(column) - cells.get(column).length());
    }

    private int width(int column) {
        return Stream.concat(Stream.of(table.heads()), table.rows().stream())
                .map(row -> row.get(column))
                .flatMapToInt(
                        cell -> IntStream.of(cell.text().length(), cell.detail().length()))
                .max()
                .orElse(0);
    }
}
