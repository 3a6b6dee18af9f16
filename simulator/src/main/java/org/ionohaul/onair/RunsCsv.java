package org.ionohaul.onair;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.statistics.Estimate;

/** What each design and rule comes to, a line each; same conventions as that of trials. */
public record RunsCsv(RunAnswer answer) implements ResultFolder.Text {
    @Override
    public String fileName() {
        return "runs.csv";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        CSVPrinter csv = new CSVPrinter(writer, CSVFormat.RFC4180);
        csv.printRecord(
                "sent_bytes",
                "order",
                "runs_each",
                "rule",
                "comparisons",
                "right",
                "right_low",
                "right_high",
                "wrong",
                "wrong_low",
                "wrong_high",
                "false_alarms",
                "false_alarms_low",
                "false_alarms_high",
                "air_s",
                "evening_s",
                "evenings");
        for (DesignResult result : answer.findings().designs()) {
            for (RuleResult rule : result.rules()) {
                csv.printRecord(row(result, rule));
            }
        }
    }

    /** Where no mode is truly better, whatever is named is wrong. */
    private List<Object> row(DesignResult result, RuleResult rule) {
        RunFindings findings = answer.findings();
        List<Object> row = new ArrayList<>(List.of(
                findings.sizes().get(result.design().size()).totalBytes(),
                result.design().order().name().toLowerCase(Locale.ROOT),
                result.design().runsEach(),
                rule.rule().name().toLowerCase(Locale.ROOT),
                rule.trials()));
        Truth truth = findings.truth();
        if (truth.isBetter()) {
            add(row, rule.naming(truth.leader()));
            add(row, rule.namingOther(truth.leader()));
        } else {
            row.addAll(List.of("", "", ""));
            add(row, rule.answering());
        }
        add(row, rule.falseAlarm());
        row.addAll(List.of(decimal(result.airSeconds()), decimal(result.eveningSeconds()), result.evenings()));
        return row;
    }

    private static void add(List<Object> row, Estimate chance) {
        row.add(chance.value());
        row.add(chance.low());
        row.add(chance.high());
    }

    private static String decimal(double seconds) {
        return String.format(Locale.ROOT, "%.1f", seconds);
    }
}
