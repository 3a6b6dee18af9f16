package org.ionohaul.report;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.ionohaul.rare.RareMiss;
import org.ionohaul.rendering.ResultFolder;

/** How seldom deadlines are missed, a line each; same conventions as those of trials. What is not told is an empty cell. */
public record RareCsv(List<RareMiss> misses) implements ResultFolder.Text {
    @Override
    public String fileName() {
        return "rare.csv";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        CSVPrinter csv = new CSVPrinter(writer, CSVFormat.RFC4180);
        csv.printRecord(
                "transfer",
                "direction",
                "mode",
                "deadline_s",
                "counted_missed",
                "counted",
                "missed",
                "missed_low",
                "missed_high",
                "begun",
                "arrived",
                "trials");
        for (RareMiss miss : misses) {
            csv.printRecord(line(miss));
        }
    }

    private static List<Object> line(RareMiss miss) {
        List<Object> line = new ArrayList<>(List.of(
                miss.transfer().name(),
                miss.direction().name().toLowerCase(Locale.ROOT),
                miss.mode().name(),
                miss.deadlineSeconds(),
                miss.counted().hits(),
                miss.counted().total()));
        miss.found()
                .filter(it -> it.isTold())
                .ifPresentOrElse(
                        it -> line.addAll(List.of(
                                it.chance().value(),
                                it.chance().low(),
                                it.chance().high())),
                        () -> line.addAll(List.of("", "", "")));
        miss.found()
                .ifPresentOrElse(
                        it -> line.addAll(List.of(it.begun(), it.arrived(), it.trials())),
                        () -> line.addAll(List.of("", "", "")));
        return line;
    }
}
