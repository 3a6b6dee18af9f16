package org.ionohaul.trace;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ionohaul.channel.End;
import org.ionohaul.rendering.CauseLegend;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.session.Cause;
import org.ionohaul.session.TimeBudget;

/**
 * A session's story as text: a time-sequence diagram with the near station on the left and the far one on the right, and
 * after each full minute where the time has gone.
 */
public record TraceText(TraceStory story) implements ResultFolder.Text {
    private static final long MINUTE_NANOS = 60_000_000_000L;
    private static final int WIDTH = 100;
    private static final String INDENT = " ".repeat(11);

    @Override
    public String fileName() {
        return "story.txt";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        for (String line : lines()) {
            writer.write(line + "\n");
        }
    }

    /** Returns the text, line by line. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>(List.of(
                story.title(),
                story.ending(),
                "",
                "   clock   near      far   what, and SINR in 3 kHz at the station that should hear it"));
        long nextMinute = MINUTE_NANOS;
        for (TraceStep step : story.steps()) {
            if (step.atNanos() >= nextMinute) {
                nextMinute = (step.atNanos() / MINUTE_NANOS + 1) * MINUTE_NANOS;
                lines.addAll(TextWrap.lines("-- so far " + soFar(step), INDENT, WIDTH));
            }
            line(step).forEach(lines::add);
        }
        lines.add("");
        lines.addAll(
                TextWrap.lines("Where the time went: " + shares(story.result().budget()), "", WIDTH));
        lines.addAll(TextWrap.lines(
                "Of the airtime of its overs, "
                        + TimeText.length(1e-9 * story.wrongRateNanos())
                        + " were lost by not having the best data rate of the moment, which no station can know.",
                "",
                WIDTH));
        return lines;
    }

    private static Stream<String> line(TraceStep step) {
        return switch (step.kind()) {
            case BURST ->
                Stream.of(String.format(Locale.ROOT, "%8s   %s   %s", clock(step.atNanos()), arrow(step), burst(step)));
            case DATA_RATE ->
                step.says().startsWith("stays") ? Stream.of() : Stream.of(note(step, "data rate " + step.says()));
            case SILENCE, OCCUPIED, POWER, STAGE -> Stream.of(note(step, step.says()));
        };
    }

    private static String clock(long nanos) {
        long tenths = Math.round(nanos * 1e-8);
        return String.format(Locale.ROOT, "%d:%02d.%d", tenths / 600, tenths / 10 % 60, tenths % 10);
    }

    /** An arrow that reaches the other station if the burst was understood there, or ends in a cross on the way. */
    private static String arrow(TraceStep step) {
        String shaft = step.dataRate() > 0 ? "======" : "------";
        if (step.at() == End.NEAR) {
            return step.isHeard() ? "|" + shaft + "---->|" : "|" + shaft + "--x  |";
        }
        return step.isHeard() ? "|<----" + shaft + "|" : "|  x--" + shaft + "|";
    }

    private static String burst(TraceStep step) {
        String sinr = String.format(Locale.ROOT, "  (%.1f dB)", step.sinrDb());
        if (step.dataRate() == 0) {
            return step.says() + (step.isHeard() ? "" : ": not heard") + sinr;
        }
        String again = step.framesAgain() > 0 ? " (" + step.framesAgain() + " again)" : "";
        String fate = step.isHeard()
                ? step.framesDecoded() + " decoded, at best " + step.heldBytes() + " bytes held in order"
                : "lost";
        return "over at data rate " + step.dataRate() + ", " + step.frames() + " frames" + again + ": " + fate + sinr;
    }

    private static String note(TraceStep step, String what) {
        String who = step.at().name().toLowerCase(Locale.ROOT);
        return String.format(Locale.ROOT, "%8s   %s: %s", clock(step.atNanos()), who, what);
    }

    private static String soFar(TraceStep step) {
        return "at best " + step.heldBytes() + " bytes held; " + shares(step.spent());
    }

    private static String shares(TimeBudget spent) {
        double total = Math.max(1, spent.totalNanos());
        return Stream.of(Cause.values())
                .map(cause -> Map.entry(cause, 100 * spent.nanosOf(cause) / total))
                .filter(entry -> entry.getValue() >= 0.5)
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .map(entry -> String.format(
                        Locale.ROOT,
                        "%s %.0f %%",
                        CauseLegend.of(entry.getKey()).name(),
                        entry.getValue()))
                .collect(Collectors.joining(", "));
    }
}
