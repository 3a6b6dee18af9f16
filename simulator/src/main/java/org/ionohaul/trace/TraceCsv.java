package org.ionohaul.trace;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.session.Cause;

/** A session's story as a table: a step a line, with the time spent on each cause until then. */
public record TraceCsv(TraceStory story) implements ResultFolder.Text {
    @Override
    public String fileName() {
        return "story.csv";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        CSVPrinter csv = new CSVPrinter(writer, CSVFormat.RFC4180);
        csv.printRecord(heads());
        for (TraceStep step : story.steps()) {
            csv.printRecord(line(step));
        }
    }

    private static List<String> heads() {
        List<String> heads = new ArrayList<>(List.of(
                "kind",
                "at_s",
                "until_s",
                "station",
                "says",
                "data_rate",
                "frames",
                "frames_again",
                "frames_decoded",
                "heard",
                "sinr_db",
                "held_bytes"));
        for (Cause cause : Cause.values()) {
            heads.add("spent_" + word(cause) + "_s");
        }
        return heads;
    }

    private static List<String> line(TraceStep step) {
        boolean isBurst = step.kind() == TraceStep.Kind.BURST;
        List<String> line = new ArrayList<>(List.of(
                word(step.kind()),
                seconds(step.atNanos()),
                seconds(step.untilNanos()),
                word(step.at()),
                step.says(),
                step.dataRate() == 0 ? "" : Integer.toString(step.dataRate()),
                isBurst ? Integer.toString(step.frames()) : "",
                isBurst ? Integer.toString(step.framesAgain()) : "",
                isBurst ? Integer.toString(step.framesDecoded()) : "",
                isBurst ? Boolean.toString(step.isHeard()) : "",
                isBurst ? String.format(Locale.ROOT, "%.2f", step.sinrDb()) : "",
                Long.toString(step.heldBytes())));
        for (Cause cause : Cause.values()) {
            line.add(seconds(step.spent().nanosOf(cause)));
        }
        return line;
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static String seconds(long nanos) {
        return String.format(Locale.ROOT, "%.3f", nanos * 1e-9);
    }
}
