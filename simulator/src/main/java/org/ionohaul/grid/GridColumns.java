package org.ionohaul.grid;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.DeadlineChance;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.SafeTime;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.statistics.Estimate;

/**
 * The columns of a grid's answers, a line for each row, case and mode: comma-separated as in RFC 4180, times in seconds after
 * pressing send, shares from 0 to 1, each estimate with its 95 % interval. What was not reached is an empty cell.
 */
public final class GridColumns {
    static final String MODE = "mode";
    static final String DELIVERED = "delivered_share";
    static final String SAFE_NINTH = "safe_9_of_10_s";
    static final String LOW = "_low";
    static final String HIGH = "_high";
    static final String MAY_BE_BEST = "may_be_best";

    /** What a column's cells are. */
    public enum Kind {
        /** Any text. */
        TEXT,
        /** Whole numbers. */
        WHOLE,
        /** Numbers, empty where there is none. */
        NUMBER,
        /** Yes or no: true or false. */
        FLAG
    }

    /**
     * A column.
     *
     * @param head what stands over it
     * @param kind what stands in it
     */
    public record Column(String head, Kind kind) {}

    /** An end of the record would be an end of the line. */
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setRecordSeparator("").get();

    private GridColumns() {}

    /**
     * Returns the line of heads.
     *
     * @param heads the heads of the table of cases
     * @param scenario one of its scenarios
     */
    public static String heads(List<String> heads, Scenario scenario) {
        return line(columns(heads, scenario).stream().map(Column::head).toList());
    }

    /**
     * Returns the columns.
     *
     * @param heads the heads of the table of cases
     * @param scenario one of its scenarios
     */
    public static List<Column> columns(List<String> heads, Scenario scenario) {
        List<Column> all = new ArrayList<>();
        add(all, Kind.WHOLE, "row");
        heads.forEach(head -> add(all, Kind.TEXT, head));
        add(all, Kind.TEXT, "transfer", "direction");
        add(all, Kind.WHOLE, "bytes");
        add(all, Kind.TEXT, MODE);
        add(all, Kind.WHOLE, "seed", "trials");
        add(all, Kind.FLAG, "is_best", MAY_BE_BEST);
        addInterval(all, DELIVERED);
        addInterval(all, "median_s");
        addInterval(all, "ninth_s");
        add(all, Kind.NUMBER, SAFE_NINTH, "safe_19_of_20_s");
        for (int i = 1; i <= mostDeadlines(scenario); i++) {
            all.addAll(ofDeadline(i));
        }
        return List.copyOf(all);
    }

    private static List<Column> ofDeadline(int deadline) {
        List<Column> columns = new ArrayList<>();
        add(columns, Kind.NUMBER, deadline(deadline));
        addInterval(columns, share(deadline));
        add(columns, Kind.FLAG, mayBeBest(deadline));
        return columns;
    }

    /** Returns the cells of a line, as many as there are columns. */
    public static List<String> cells(String line) {
        try (CSVParser parser = CSVParser.parse(line, CSVFormat.RFC4180)) {
            return parser.iterator().next().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the head of a deadline, from 1. */
    static String deadline(int deadline) {
        return "deadline_" + deadline + "_s";
    }

    /** Returns the head of the chance of a deadline, from 1. */
    static String share(int deadline) {
        return "deadline_" + deadline + "_share";
    }

    /** Returns the head of whether no mode is better for a deadline beyond chance. */
    static String mayBeBest(int deadline) {
        return "deadline_" + deadline + "_may_be_best";
    }

    private static int mostDeadlines(Scenario scenario) {
        return scenario.transfers().stream()
                .map(Transfer::deadlinesSeconds)
                .mapToInt(List::size)
                .max()
                .orElse(0);
    }

    private static void add(List<Column> columns, Kind kind, String... heads) {
        for (String head : heads) {
            columns.add(new Column(head, kind));
        }
    }

    private static void addInterval(List<Column> columns, String head) {
        add(columns, Kind.NUMBER, head, head + LOW, head + HIGH);
    }

    /** Returns the lines of a row. */
    static List<String> lines(CaseRow row, Scenario scenario, StudySummary summary) {
        List<String> lines = new ArrayList<>();
        for (CaseSummary it : summary.cases()) {
            for (int mode = 0; mode < it.modes().size(); mode++) {
                List<Object> cells = new ArrayList<>(List.of(row.line()));
                cells.addAll(row.cells());
                cells.addAll(List.of(
                        it.transfer().name(),
                        it.direction().name().toLowerCase(Locale.ROOT),
                        it.transfer().totalBytes(),
                        it.modes().get(mode).mode().name(),
                        scenario.seed(),
                        it.modes().get(mode).trials(),
                        it.leaders().first() == mode,
                        it.leaders().modes().contains(mode)));
                addMode(cells, it, mode);
                for (int i = it.transfer().deadlinesSeconds().size() + 1; i <= mostDeadlines(scenario); i++) {
                    cells.addAll(Collections.nCopies(ofDeadline(i).size(), ""));
                }
                lines.add(line(cells));
            }
        }
        return lines;
    }

    private static void addMode(List<Object> cells, CaseSummary summary, int mode) {
        ModeSummary it = summary.modes().get(mode);
        add(cells, it.delivered());
        add(cells, it.medianSeconds());
        add(cells, it.ninthSeconds());
        add(cells, it.ninthPlan());
        add(cells, it.plan());
        for (int i = 0; i < it.deadlines().size(); i++) {
            DeadlineChance deadline = it.deadlines().get(i);
            cells.add(deadline.deadlineSeconds());
            add(cells, deadline.chance());
            cells.add(summary.deadlineLeaders().get(i).modes().contains(mode));
        }
    }

    private static void add(List<Object> cells, SafeTime time) {
        cells.add(cell(time.seconds().orElse(Double.POSITIVE_INFINITY)));
    }

    private static void add(List<Object> cells, Estimate estimate) {
        cells.add(cell(estimate.value()));
        cells.add(cell(estimate.low()));
        cells.add(cell(estimate.high()));
    }

    private static Object cell(double value) {
        return Double.isFinite(value) ? value : "";
    }

    private static String line(List<?> cells) {
        try {
            StringBuilder line = new StringBuilder();
            FORMAT.printRecord(line, cells.toArray());
            return line.toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
