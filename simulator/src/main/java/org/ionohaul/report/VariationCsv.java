package org.ionohaul.report;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.CaseSummary;
import org.ionohaul.study.DeadlineChance;
import org.ionohaul.study.KeySweep;
import org.ionohaul.study.ModeSummary;
import org.ionohaul.study.PairedEffect;
import org.ionohaul.study.Variation;
import org.ionohaul.study.VariationPoint;

/**
 * Every point of a variation, a line each case, mode and deadline: comma-separated as in RFC 4180, UTF-8, times in seconds
 * after pressing send. What was not reached is an empty cell.
 */
public record VariationCsv(Variation variation) implements ResultFolder.Entry {
    @Override
    public String fileName() {
        return "vary.csv";
    }

    @Override
    public void writeTo(Path file) throws IOException {
        try (Writer writer = Files.newBufferedWriter(file);
                CSVPrinter csv = new CSVPrinter(writer, CSVFormat.RFC4180)) {
            csv.printRecord(heads());
            for (VariationPoint point : variation.points()) {
                for (int i = 0; i < point.cases().size(); i++) {
                    for (int mode = 0; mode < point.cases().get(i).modes().size(); mode++) {
                        csv.printRecord(line(
                                point,
                                point.cases().get(i),
                                mode,
                                point.effects().get(i).get(mode)));
                    }
                }
            }
        }
    }

    private List<String> heads() {
        List<String> heads =
                new ArrayList<>(variation.sweeps().stream().map(KeySweep::key).toList());
        heads.addAll(List.of("transfer", "direction", "mode", "is_best", "trials"));
        heads.addAll(interval("delivered_share"));
        heads.addAll(interval("median_s"));
        heads.addAll(interval("ninth_s"));
        heads.addAll(interval("median_change_s"));
        heads.add("change_p_value");
        int deadlines = variation.scenario().transfers().stream()
                .mapToInt(it -> it.deadlinesSeconds().size())
                .max()
                .orElse(0);
        for (int i = 1; i <= deadlines; i++) {
            heads.add("deadline_" + i + "_s");
            heads.addAll(interval("deadline_" + i + "_share"));
        }
        return heads;
    }

    private static List<String> interval(String name) {
        return List.of(name, name + "_low", name + "_high");
    }

    private static List<Object> line(VariationPoint point, CaseSummary summary, int index, PairedEffect effect) {
        ModeSummary mode = summary.modes().get(index);
        List<Object> line = new ArrayList<>(point.values());
        line.addAll(List.of(
                summary.transfer().name(),
                summary.direction().name().toLowerCase(Locale.ROOT),
                mode.mode().name(),
                summary.ranking().get(0) == index,
                mode.trials()));
        addInterval(line, mode.delivered());
        addInterval(line, mode.medianSeconds());
        addInterval(line, mode.ninthSeconds());
        addInterval(line, effect.medianChangeSeconds());
        line.add(effect.pValue());
        for (DeadlineChance deadline : mode.deadlines()) {
            line.add(deadline.deadlineSeconds());
            addInterval(line, deadline.chance());
        }
        return line;
    }

    private static void addInterval(List<Object> line, Estimate estimate) {
        line.add(cell(estimate.value()));
        line.add(cell(estimate.low()));
        line.add(cell(estimate.high()));
    }

    private static Object cell(double value) {
        return Double.isFinite(value) ? value : "";
    }
}
