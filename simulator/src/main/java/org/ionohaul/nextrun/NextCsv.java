package org.ionohaul.nextrun;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.statistics.Estimate;

/** What each candidate is worth, a line each, the best per minute first; same conventions as that of trials. */
public record NextCsv(NextRun next) implements ResultFolder.Text {
    @Override
    public String fileName() {
        return "next.csv";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        CSVPrinter csv = new CSVPrinter(writer, CSVFormat.RFC4180);
        csv.printRecord(
                "kind",
                "mode",
                "direction",
                "sent_bytes",
                "start",
                "read_at",
                "read_what",
                "air_s",
                "fewer_wrong",
                "fewer_wrong_low",
                "fewer_wrong_high",
                "fewer_wrong_per_min",
                "fewer_wrong_per_min_low",
                "fewer_wrong_per_min_high",
                "other_choice",
                "times",
                "fewer_wrong_in_time",
                "fewer_wrong_in_time_low",
                "fewer_wrong_in_time_high",
                "may_be_best");
        for (Worth worth : next.found().orElseThrow().worths()) {
            List<Object> row = new ArrayList<>(named(worth.candidate()));
            row.add(String.format(Locale.ROOT, "%.1f", worth.airSeconds()));
            add(row, worth.fewerWrong());
            add(row, worth.fewerWrongPerMinute());
            row.add(decimal(worth.changedShare()));
            row.add(worth.times());
            add(row, worth.fewerWrongInTime());
            row.add(worth.mayBeBest());
            csv.printRecord(row);
        }
    }

    private static List<Object> named(Candidate candidate) {
        if (candidate instanceof Candidate.Send send) {
            return List.of(
                    "send",
                    send.mode().name(),
                    send.direction().name().toLowerCase(Locale.ROOT),
                    send.bytes(),
                    send.start().map(Object::toString).orElse(""),
                    "",
                    "");
        }
        Candidate.Listen listen = (Candidate.Listen) candidate;
        return List.of(
                "read",
                "",
                "",
                "",
                "",
                listen.end().name().toLowerCase(Locale.ROOT),
                listen.what().name().toLowerCase(Locale.ROOT));
    }

    private static void add(List<Object> row, Estimate chance) {
        row.add(decimal(chance.value()));
        row.add(decimal(chance.low()));
        row.add(decimal(chance.high()));
    }

    private static String decimal(double number) {
        return String.format(Locale.ROOT, "%.5f", number);
    }
}
