package org.ionohaul.grid;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.ionohaul.scenario.CellTable;
import org.ionohaul.scenario.Problem;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.SourceFiles;

/** Reads a table of cases, as a spreadsheet writes it. */
public final class CaseTableReader {
    /** What decides which skies there are; the command line says it for all rows. */
    private static final Set<String> KEYS_OF_CHANCE = Set.of("seed", "trials");

    private final String file;
    private final NavigableSet<Problem> problems = new TreeSet<>();

    private CaseTableReader(String file) {
        this.file = file;
    }

    /**
     * Reads a table.
     *
     * @param files where its text comes from
     * @param file the table: a line of heads, then a line a case
     * @throws ScenarioProblems if anything in it is wrong, with all that is; what its cells say is not looked at
     */
    public static CaseTable read(SourceFiles files, Path file) throws ScenarioProblems {
        CaseTableReader reader = new CaseTableReader(file.toString());
        if (file.toString().endsWith(".parquet")) {
            reader.problem(
                    1,
                    1,
                    "",
                    "is a Parquet table, which is read by the jar for clusters alone",
                    "save it as CSV, or let that jar run on this machine: spark-submit --master \"local[*]\" (README, Grids)");
            throw new ScenarioProblems(List.copyOf(reader.problems));
        }
        List<CellTable.Row> rows = CellTable.readLong(files, file, reader.problems::add)
                .map(reader::rows)
                .orElse(List.of());
        if (reader.problems.isEmpty()) {
            CellTable.Row first = rows.get(0);
            List<String> heads = IntStream.range(0, first.cells().size())
                    .mapToObj(first::cell)
                    .toList();
            reader.checkHeads(first, heads);
            List<CaseRow> cases =
                    rows.stream().skip(1).map(row -> reader.row(row, heads)).toList();
            if (reader.problems.isEmpty()) {
                return new CaseTable(file.toString(), heads, cases);
            }
        }
        throw new ScenarioProblems(List.copyOf(reader.problems));
    }

    /**
     * Checks the heads of a table that is read by other means.
     *
     * @param file the table, as the user named it
     * @throws ScenarioProblems if one can't be a head
     */
    public static void checkHeads(String file, List<String> heads) throws ScenarioProblems {
        CaseTableReader reader = new CaseTableReader(file);
        reader.checkHeads(
                new CellTable.Row(
                        1, heads, IntStream.rangeClosed(1, heads.size()).boxed().toList()),
                heads);
        if (!reader.problems.isEmpty()) {
            throw new ScenarioProblems(List.copyOf(reader.problems));
        }
    }

    private List<CellTable.Row> rows(CellTable table) {
        if (table.rows().size() < 2) {
            problem(
                    1,
                    1,
                    "",
                    "holds no case",
                    "write a line of heads, such as label.hour,near.snr, then a line a case");
        }
        return table.rows();
    }

    private void checkHeads(CellTable.Row row, List<String> heads) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < heads.size(); i++) {
            String head = heads.get(i);
            if (head.isEmpty()) {
                problem(row.line(), row.column(i), "", "a column has no head", "name a key, or begin with label.");
            } else if (!seen.add(head)) {
                problem(row.line(), row.column(i), head, "stands twice", "leave one of them out");
            } else if (KEYS_OF_CHANCE.contains(head)) {
                problem(
                        row.line(),
                        row.column(i),
                        head,
                        "can't differ from row to row, since all rows are tried under the same skies",
                        "give one value with --" + head);
            }
        }
        if (heads.stream().allMatch(CaseTable::isLabel)) {
            problem(row.line(), 1, "", "no column names a key of the scenario", "add one, such as near.snr");
        }
    }

    private CaseRow row(CellTable.Row row, List<String> heads) {
        row.surplus(file, heads.size()).ifPresent(problems::add);
        List<String> cells = new ArrayList<>();
        List<Integer> columns = new ArrayList<>();
        for (int i = 0; i < heads.size(); i++) {
            cells.add(row.cell(i).replaceAll("\\R", " "));
            columns.add(row.column(i));
        }
        return CaseTable.of(row.line(), heads, cells, columns);
    }

    private void problem(int line, int column, String key, String message, String remedy) {
        problems.add(new Problem(file, line, column, key, message, remedy));
    }
}
