package org.ionohaul.grid;

import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One case of a table: what is changed in the scenario for it.
 *
 * @param line where it stands in the table, from 1
 * @param cells what the table says of it, one a head
 * @param columns where in its line each of them begins, from 1
 * @param changes values by scenario key, in the order of the heads; a key whose cell is empty stays as in the file
 */
public record CaseRow(int line, List<String> cells, List<Integer> columns, Map<String, String> changes)
        implements Serializable {
    /** Copies them, keeping their order. */
    public CaseRow {
        cells = List.copyOf(cells);
        columns = List.copyOf(columns);
        changes = Collections.unmodifiableMap(new LinkedHashMap<>(changes));
    }
}
