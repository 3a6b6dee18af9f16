package org.ionohaul.rendering;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A table on a terminal: columns as wide as they must be, names to the left, figures to the right, small print on a line
 * of its own, or of two where a range with the unit at both ends would not fit otherwise. Columns that do not fit beside the
 * others come in a further block below.
 */
public final class TextTable {
    private static final String GAP = "  ";

    private final Table table;
    private final boolean isBroken;

    /** Prepares a table for a terminal. */
    public TextTable(Table table) {
        this(table, false);
    }

    private TextTable(Table table, boolean isBroken) {
        this.table = table;
        this.isBroken = isBroken;
    }

    /** Returns the lines, none longer than asked unless a single column is. */
    public List<String> lines(int mostCharacters) {
        return isBroken
                        || width(IntStream.range(1, table.heads().size())
                                        .boxed()
                                        .toList())
                                <= mostCharacters
                ? blocks(mostCharacters)
                : new TextTable(table, true).blocks(mostCharacters);
    }

    private List<String> blocks(int mostCharacters) {
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
        lines.add(GAP + "-".repeat(width(columns) - GAP.length()));
        table.rows().forEach(row -> addRow(lines, row, columns));
    }

    private void addRow(List<String> lines, List<Cell> row, List<Integer> columns) {
        lines.add(line(row.stream().map(Cell::text).toList(), columns));
        List<List<String>> details = row.stream().map(this::details).toList();
        int most = columns.stream().mapToInt(it -> details.get(it).size()).max().orElse(0);
        for (int i = 0; i < Math.max(most, details.get(0).size()); i++) {
            int at = i;
            lines.add(line(
                    details.stream().map(it -> at < it.size() ? it.get(at) : "").toList(), columns));
        }
    }

    /** Returns the lines of a cell's small print. */
    private List<String> details(Cell cell) {
        return isBroken || cell.detail().isEmpty() ? cell.pieces() : List.of(cell.detail());
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

    private int width(List<Integer> columns) {
        return GAP.length()
                + width(0)
                + columns.stream().mapToInt(it -> GAP.length() + width(it)).sum();
    }

    private int width(int column) {
        return Stream.concat(Stream.of(table.heads()), table.rows().stream())
                .map(row -> row.get(column))
                .flatMap(cell -> Stream.concat(Stream.of(cell.text()), details(cell).stream()))
                .mapToInt(String::length)
                .max()
                .orElse(0);
    }
}
