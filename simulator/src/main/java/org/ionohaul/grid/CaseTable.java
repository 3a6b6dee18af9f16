package org.ionohaul.grid;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.ionohaul.study.KeySweep;
import org.ionohaul.study.PlannedPoint;

/**
 * The cases to be answered, a row each.
 *
 * @param file where it stands, as the user named it
 * @param heads what stands over its columns: full names of scenario keys, such as {@code near.snr}, or labels
 * @param rows the cases, at least one
 */
public record CaseTable(String file, List<String> heads, List<CaseRow> rows) {
    /** What a head begins with whose cells are for people alone: the hour of a level, the name of a place. */
    static final String LABEL = "label.";

    /** More stand too close side by side. */
    private static final int MOST_VALUES = 40;

    /** Copies the lists. */
    public CaseTable {
        heads = List.copyOf(heads);
        rows = List.copyOf(rows);
    }

    /**
     * Returns a table of all combinations.
     *
     * @param sweeps the keys with their values
     * @param points all combinations of them
     */
    public static CaseTable product(List<KeySweep> sweeps, List<PlannedPoint> points) {
        List<String> heads = sweeps.stream().map(KeySweep::key).toList();
        return new CaseTable(
                "grid",
                heads,
                IntStream.range(0, points.size())
                        .mapToObj(i -> of(i + 1, heads, points.get(i).values()))
                        .toList());
    }

    /** Returns what it is called, for people and for the folder of results. */
    public String name() {
        return file.replaceFirst("^.*[/\\\\]", "").replaceFirst("\\.[^.]*$", "");
    }

    /**
     * Returns two columns that a map can be made of, from 0: the first two that together tell every row from every other, each
     * with 2 to 40 values; none if there are no such.
     */
    public List<Integer> mapped() {
        List<Integer> narrow =
                IntStream.range(0, heads.size()).boxed().filter(this::isNarrow).toList();
        return narrow.stream()
                .flatMap(down -> narrow.stream().filter(it -> it > down).map(across -> List.of(down, across)))
                .filter(it -> values(it) == rows.size())
                .findFirst()
                .orElse(List.of());
    }

    private boolean isNarrow(int column) {
        int values = values(List.of(column));
        return values >= 2 && values <= MOST_VALUES;
    }

    private int values(List<Integer> columns) {
        return (int) rows.stream()
                .map(row -> columns.stream().map(row.cells()::get).toList())
                .distinct()
                .count();
    }

    /** Returns a row that stands in no text: its cells are counted. */
    public static CaseRow of(int line, List<String> heads, List<String> cells) {
        return of(
                line,
                heads,
                cells,
                IntStream.rangeClosed(1, cells.size()).boxed().toList());
    }

    /** Returns a row. */
    static CaseRow of(int line, List<String> heads, List<String> cells, List<Integer> columns) {
        Map<String, String> changes = new LinkedHashMap<>();
        for (int i = 0; i < heads.size(); i++) {
            if (!isLabel(heads.get(i)) && !cells.get(i).isEmpty()) {
                changes.put(heads.get(i), cells.get(i));
            }
        }
        return new CaseRow(line, cells, columns, changes);
    }

    static boolean isLabel(String head) {
        return head.startsWith(LABEL);
    }
}
