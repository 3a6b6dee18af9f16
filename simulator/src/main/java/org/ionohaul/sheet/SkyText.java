package org.ionohaul.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.ionohaul.channel.End;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.SkyWatch;
import org.ionohaul.channel.WatchSummary;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.scenario.ReadSeries;
import org.ionohaul.trial.SkyView;

/** One trial's sky for a terminal: a strip of SNR an end, with the other stations below it, and what it comes to. */
public final class SkyText {
    private static final int WIDTH = 80;
    private static final int LABEL = 8;
    private static final int COLUMNS = WIDTH - LABEL;
    private static final int ROWS = 9;
    private static final int MOST_MARKS = 7;
    private static final double STEP_DB = 5;

    private final SkyView view;
    private final TimeScale scale;

    /** Prepares the text. */
    public SkyText(SkyView view) {
        this.view = view;
        this.scale = new TimeScale(view.lengthSeconds());
    }

    /** Returns the lines. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>(TextWrap.lines(view.scenario().title(), "", WIDTH));
        lines.addAll(TextWrap.lines(
                "The sky of trial " + view.trial() + " with seed "
                        + view.scenario().seed()
                        + ": SNR in 3 kHz, in dB, of a full-power carrier. o: the middle, :: eight tenths of the time."
                        + " Others: x: mostly there, .: now and then.",
                "",
                WIDTH));
        addSteady(lines, view.near().conditions());
        for (End end : End.values()) {
            lines.add("");
            lines.add(SkyTables.heading(view, end));
            view.scenario().sky().readings(end).ifPresent(it -> lines.addAll(TextWrap.lines(readings(it), "", WIDTH)));
            addStrip(lines, view.at(end));
        }
        lines.add("");
        lines.addAll(new TextTable(SkyTables.ends(view)).lines(WIDTH));
        lines.add("");
        addMeters(lines);
        lines.add("");
        lines.addAll(TextWrap.lines(SkyTables.needs(view).caption() + ":", "", WIDTH));
        lines.addAll(new TextTable(SkyTables.needs(view)).lines(WIDTH));
        return lines;
    }

    private String readings(ReadSeries read) {
        return "The " + (read.isOfSignal() ? "level" : "noise") + " is that of "
                + read.levels().size()
                + " readings in " + read.file() + ", from minute " + Math.round(read.firstSeconds() / 60)
                + " to minute "
                + Math.round(read.lastSeconds() / 60) + "; what changes faster is simulated.";
    }

    private void addMeters(List<String> lines) {
        Table meters = SkyTables.meters(view);
        if (meters.rows().isEmpty()) {
            lines.addAll(TextWrap.lines(
                    "What a meter shows in S and dBm can't be told: the scenario states just SNRs. With signal and noise in"
                            + " place of snr it can.",
                    "",
                    WIDTH));
        } else {
            lines.addAll(TextWrap.lines(meters.caption() + ":", "", WIDTH));
            lines.addAll(new TextTable(meters).lines(WIDTH));
        }
    }

    /** What doesn't show in the strips, or shows as something else. */
    private void addSteady(List<String> lines, SkyConditions sky) {
        sky.groundWave()
                .ifPresent(wave -> lines.addAll(TextWrap.lines(
                        String.format(
                                Locale.ROOT,
                                "Both hear a ground wave, %.0f dB relative to the sky wave as stated, %.1f ms before it.",
                                wave.levelDb(),
                                1000 * wave.leadSeconds()),
                        "",
                        WIDTH)));
        double atFirstHz = sky.frequencyErrorHz(0);
        double atLastHz = sky.frequencyErrorHz(Math.round(1e9 * view.lengthSeconds()));
        if (atFirstHz > 0 || atLastHz > 0) {
            lines.addAll(TextWrap.lines(
                    String.format(
                            Locale.ROOT,
                            "Their frequencies are %.0f Hz apart at first, %.0f Hz at the end.",
                            atFirstHz,
                            atLastHz),
                    "",
                    WIDTH));
        }
    }

    private void addStrip(List<String> lines, SkyWatch watch) {
        List<WatchSummary> spans = watch.spans(Math.min(COLUMNS, watch.samples()));
        double top = spans.stream().mapToDouble(it -> it.sinrDb().high()).max().orElse(0);
        double bottom =
                spans.stream().mapToDouble(it -> it.sinrDb().low()).min().orElse(0);
        double rowDb = Math.max(STEP_DB, STEP_DB * Math.ceil((top - bottom) / STEP_DB / ROWS));
        for (double low = rowDb * Math.floor(top / rowDb); low > bottom - rowDb; low -= rowDb) {
            lines.add((String.format(Locale.ROOT, "%6.0f |", low) + row(spans, low, low + rowDb)).stripTrailing());
        }
        addRow(lines, "others |", spans, WatchSummary::occupiedShare);
        if (watch.summary().droppedOutShare() > 0) {
            addRow(lines, "drops  |", spans, WatchSummary::droppedOutShare);
        }
        if (watch.summary().sporadicShare() > 0) {
            addRow(lines, "spor.E |", spans, WatchSummary::sporadicShare);
        }
        lines.add(String.format(Locale.ROOT, "%-" + LABEL + "s", scale.unit()) + labels());
    }

    private static String row(List<WatchSummary> spans, double low, double high) {
        StringBuilder row = new StringBuilder();
        for (WatchSummary span : spans) {
            boolean isMiddle = low <= span.sinrDb().median() && span.sinrDb().median() < high;
            boolean isCommon =
                    span.sinrDb().low() < high && low <= span.sinrDb().high();
            row.append(isMiddle ? 'o' : isCommon ? ':' : ' ');
        }
        return row.toString();
    }

    private static void addRow(
            List<String> lines, String label, List<WatchSummary> spans, ToDoubleFunction<WatchSummary> share) {
        StringBuilder row = new StringBuilder(label);
        spans.stream().mapToDouble(share).forEach(it -> row.append(it >= 0.5 ? 'x' : it > 0 ? '.' : ' '));
        lines.add(row.toString().stripTrailing());
    }

    private String labels() {
        StringBuilder labels = new StringBuilder();
        for (double mark : scale.marksSeconds(MOST_MARKS)) {
            String label = scale.label(mark);
            int column = Math.min((int) Math.round(COLUMNS * scale.share(mark)), COLUMNS - label.length());
            labels.append(" ".repeat(Math.max(0, column - labels.length()))).append(label);
        }
        return labels.toString();
    }
}
