package org.ionohaul.traffic;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.statistics.Estimate;

/**
 * What a net comes to, a line for each value of the key that is varied, kind of message and measure; measures of the net as a
 * whole have no kind.
 *
 * @param key the key that is varied; empty if none
 * @param points at least one
 */
public record NetCsv(String key, List<NetPoint> points) implements ResultFolder.Text {
    @Override
    public String fileName() {
        return "net.csv";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        CSVPrinter csv = new CSVPrinter(writer, CSVFormat.RFC4180);
        csv.printRecord("key", "value", "group", "message", "measure", "estimate", "low", "high", "trials");
        for (NetPoint point : points) {
            for (Row row : rows(point.findings())) {
                csv.printRecord(
                        key,
                        point.value(),
                        row.group(),
                        row.message(),
                        row.measure(),
                        shown(row.estimate().value()),
                        shown(row.estimate().low()),
                        shown(row.estimate().high()),
                        point.findings().trialsDone());
            }
        }
    }

    private static Object shown(double number) {
        return Double.isInfinite(number) ? "" : number;
    }

    /** A measure of a kind of message, or of the net. */
    private record Row(String group, String message, String measure, Estimate estimate) {}

    private static List<Row> rows(NetFindings findings) {
        List<Row> rows = new ArrayList<>();
        for (KindFindings kind : findings.kinds()) {
            String group = kind.group().name();
            String name = kind.kind().name();
            rows.add(new Row(group, name, "half_s", kind.half()));
            rows.add(new Row(group, name, "nine_of_ten_s", kind.nineOfTen()));
            for (int i = 0; i < kind.deadlines().size(); i++) {
                String measure =
                        "within_" + Math.round(kind.kind().deadlinesSeconds().get(i)) + "_s";
                kind.deadlines().get(i).ifPresent(it -> rows.add(new Row(group, name, measure, it)));
            }
            add(rows, group, name, "through", kind.through());
            add(rows, group, name, "given_up", kind.givenUp());
            add(rows, group, name, "mean_wait_s", kind.waitSeconds());
            add(rows, group, name, "mean_hand_over_s", kind.handOverSeconds());
            add(rows, group, name, "mean_calls", kind.calls());
        }
        add(rows, "", "", "through", findings.through());
        rows.add(new Row("", "", "occupied", findings.occupied()));
        rows.add(new Row("", "", "collided", findings.collided()));
        rows.add(new Row("", "", "to_busy_gateway", findings.toBusyGateway()));
        rows.add(new Row("", "", "calls_per_trial", findings.callsPerTrial()));
        rows.add(new Row("", "", "refused_per_trial", findings.refusedPerTrial()));
        rows.add(new Row("", "", "cut_off_per_trial", findings.cutOffPerTrial()));
        rows.add(new Row("", "", "fairness", findings.fairness()));
        rows.add(new Row("", "", "waiting_at_middle", findings.backlog().atMiddle()));
        rows.add(new Row("", "", "waiting_at_end", findings.backlog().atEnd()));
        rows.add(new Row("", "", "left_behind", findings.backlog().leftBehind()));
        rows.add(new Row("", "", "beyond_limit", findings.backlog().beyondLimit()));
        return rows;
    }

    private static void add(List<Row> rows, String group, String message, String measure, Optional<Estimate> estimate) {
        estimate.ifPresent(it -> rows.add(new Row(group, message, measure, it)));
    }
}
