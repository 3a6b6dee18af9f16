package org.ionohaul.whatif;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.ionohaul.analysis.Alike;
import org.ionohaul.analysis.CasePoint;
import org.ionohaul.analysis.Leaders;
import org.ionohaul.analysis.Margin;
import org.ionohaul.analysis.ModePoint;
import org.ionohaul.analysis.VariationPoint;
import org.ionohaul.report.CaseName;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.statistics.Estimate;

/**
 * Points as lines of a file, one each case and mode: comma-separated as in RFC 4180, UTF-8, times in seconds after pressing
 * send. What was not reached is an empty cell.
 */
final class PointRows {
    private final Scenario scenario;
    private final List<CaseName> cases;
    private final boolean isPartial;

    /**
     * Prepares the lines.
     *
     * @param scenario the scenario at the reference
     * @param keysVaried the keys that are varied
     * @param isPartial whether points are missing because of an interruption
     */
    PointRows(Scenario scenario, Collection<String> keysVaried, boolean isPartial) {
        this.scenario = scenario;
        this.cases = CaseName.all(scenario, keysVaried);
        this.isPartial = isPartial;
    }

    /**
     * Writes the file.
     *
     * @param firstHeads heads of the columns that tell the points apart
     */
    void write(List<String> firstHeads, List<List<Object>> rows, Writer writer) throws IOException {
        CSVPrinter csv = new CSVPrinter(writer, CSVFormat.RFC4180);
        csv.printRecord(heads(firstHeads));
        csv.printRecords(rows);
    }

    private List<String> heads(List<String> firstHeads) {
        List<String> heads = new ArrayList<>(firstHeads);
        heads.addAll(List.of("transfer", "direction", "mode", "trials", "partial"));
        heads.addAll(
                List.of("is_best", "is_clear", "may_be_best", "alike_within_share", "alike_within_s", "next_mode"));
        heads.addAll(interval("best_first_share"));
        heads.addAll(interval("delivered_share"));
        heads.addAll(interval("median_s"));
        heads.addAll(interval("ninth_s"));
        heads.addAll(interval("median_change_s"));
        heads.addAll(List.of("quicker_trials", "slower_trials", "change_p_value", "variance_ratio"));
        for (int i = 1; i <= mostDeadlines(); i++) {
            heads.add("deadline_" + i + "_s");
            heads.addAll(interval("deadline_" + i + "_share"));
            heads.addAll(interval("deadline_" + i + "_change"));
        }
        return heads;
    }

    private int mostDeadlines() {
        return cases.stream().mapToInt(it -> it.deadlinesSeconds().size()).max().orElse(0);
    }

    private static List<String> interval(String name) {
        return List.of(name, name + "_low", name + "_high");
    }

    /** Returns the lines of a point, each beginning with the same cells. */
    List<List<Object>> rows(List<String> firstCells, VariationPoint point) {
        List<List<Object>> rows = new ArrayList<>();
        for (int i = 0; i < cases.size(); i++) {
            for (int mode = 0; mode < scenario.modes().size(); mode++) {
                List<Object> row = new ArrayList<>(firstCells);
                addCase(row, cases.get(i), point.cases().get(i), mode);
                addMode(row, point.cases().get(i).modes().get(mode));
                rows.add(row);
            }
        }
        return rows;
    }

    private void addCase(List<Object> row, CaseName name, CasePoint point, int mode) {
        boolean isBest = point.best() == mode;
        row.addAll(List.of(
                name.transfer(),
                name.direction().name().toLowerCase(Locale.ROOT),
                scenario.modes().get(mode).name(),
                scenario.trials(),
                isPartial,
                isBest,
                isBest && point.choice() == CasePoint.Choice.CLEAR));
        addLeaders(row, point.leaders(), mode);
        row.add(
                isBest
                        ? point.margin()
                                .map(Margin::next)
                                .map(scenario.modes()::get)
                                .map(Mode::name)
                                .orElse("")
                        : "");
        if (isBest && point.margin().isPresent()) {
            add(row, point.margin().get().bestBefore());
        } else {
            row.addAll(List.of("", "", ""));
        }
    }

    /** Modes that can't be told apart from the best have how far they are alike. */
    private static void addLeaders(List<Object> row, Leaders leaders, int mode) {
        boolean isLeader = leaders.modes().contains(mode);
        Optional<Alike> alike = leaders.alike().filter(it -> isLeader);
        row.add(isLeader);
        row.add(alike.map(Alike::share).map(PointRows::cell).orElse(""));
        row.add(alike.map(Alike::seconds).map(PointRows::cell).orElse(""));
    }

    private static void addMode(List<Object> row, ModePoint mode) {
        add(row, mode.delivered());
        add(row, mode.medianSeconds());
        add(row, mode.ninthSeconds());
        add(row, mode.effect().medianChangeSeconds());
        row.addAll(List.of(
                mode.effect().quickerTrials(),
                mode.effect().slowerTrials(),
                mode.effect().pValue(),
                cell(mode.effect().varianceRatio())));
        for (int i = 0; i < mode.deadlines().size(); i++) {
            row.add(mode.deadlines().get(i).deadlineSeconds());
            add(row, mode.deadlines().get(i).chance());
            add(row, mode.effect().deadlineChanges().get(i));
        }
    }

    private static void add(List<Object> row, Estimate estimate) {
        row.add(cell(estimate.value()));
        row.add(cell(estimate.low()));
        row.add(cell(estimate.high()));
    }

    private static Object cell(double value) {
        return Double.isFinite(value) ? value : "";
    }
}
