package org.ionohaul.report;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.session.Cause;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.ModeTrials;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.TrialRow;

/**
 * Every session of a study, a line each, for spreadsheets, R and Python: comma-separated as in RFC 4180, UTF-8, a point
 * for decimals, units in the heads, times in seconds after pressing send. What never happened is an empty cell.
 */
public record TrialsCsv(StudyResult result) implements ResultFolder.Text {
    private static final long NANOS_PER_MILLI = 1_000_000;
    private static final long MILLIS_PER_SECOND = 1_000;

    @Override
    public String fileName() {
        return "trials.csv";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        CSVPrinter csv = new CSVPrinter(writer, CSVFormat.RFC4180);
        csv.printRecord(heads());
        for (CaseTrials trials : result.cases()) {
            for (ModeTrials mode : trials.modes()) {
                for (TrialRow row : mode.rows()) {
                    csv.printRecord(line(trials, mode, row));
                }
            }
        }
    }

    private List<String> heads() {
        List<String> heads = new ArrayList<>(List.of(
                "transfer",
                "direction",
                "mode",
                "trial",
                "outcome",
                "delivered_s",
                "confirmed_s",
                "closed_s",
                "ended_s",
                "first_byte_s",
                "held_bytes",
                "links_lost",
                "overs_sent",
                "acknowledgements_lost",
                "ending",
                "wrong_frames"));
        for (Cause cause : Cause.values()) {
            heads.add(word(cause) + "_s");
        }
        for (int file = 1; file <= mostFiles(); file++) {
            heads.add("file_" + file + "_delivered_s");
        }
        for (int dataRate = 1; dataRate <= mostDataRates(); dataRate++) {
            heads.add("rate_" + dataRate + "_airtime_s");
        }
        return heads;
    }

    private List<String> line(CaseTrials trials, ModeTrials mode, TrialRow row) {
        List<String> line = new ArrayList<>(List.of(
                trials.transfer().name(),
                word(trials.direction()),
                mode.mode().name(),
                Long.toString(row.trial()),
                word(row.outcome()),
                seconds(row.deliveredNanos()),
                seconds(row.confirmedNanos()),
                seconds(row.closedNanos()),
                seconds(row.endedNanos()),
                seconds(row.firstByteSeconds()),
                Long.toString(row.bytesHeld()),
                Integer.toString(row.linksLost()),
                Integer.toString(row.oversSent()),
                Integer.toString(row.acknowledgementsLost()),
                word(row.ending()),
                Integer.toString(row.wrongFrames())));
        for (Cause cause : Cause.values()) {
            line.add(seconds(row.budgetNanos(cause)));
        }
        for (int file = 0; file < mostFiles(); file++) {
            line.add(file < row.files() ? seconds(row.fileDeliveredNanos(file)) : "");
        }
        for (int dataRate = 1; dataRate <= mostDataRates(); dataRate++) {
            line.add(
                    dataRate <= row.dataRates() ? seconds(row.dataRate(dataRate).airtimeNanos()) : "");
        }
        return line;
    }

    private int mostFiles() {
        return result.scenario().transfers().stream()
                .mapToInt(it -> it.files().size())
                .max()
                .orElse(0);
    }

    private int mostDataRates() {
        return result.scenario().modes().stream()
                .mapToInt(it -> it.dataRates().size())
                .max()
                .orElse(0);
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static String seconds(OptionalLong nanos) {
        return nanos.isPresent() ? seconds(nanos.getAsLong()) : "";
    }

    private static String seconds(double seconds) {
        return Double.isInfinite(seconds) ? "" : seconds(Math.round(1e9 * seconds));
    }

    /** Returns seconds with three decimals, rounded half up. */
    private static String seconds(long nanos) {
        long millis = Math.floorDiv(nanos + NANOS_PER_MILLI / 2, NANOS_PER_MILLI);
        String decimals =
                Long.toString(MILLIS_PER_SECOND + millis % MILLIS_PER_SECOND).substring(1);
        return millis / MILLIS_PER_SECOND + "." + decimals;
    }
}
