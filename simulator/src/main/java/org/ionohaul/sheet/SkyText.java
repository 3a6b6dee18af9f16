package org.ionohaul.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.ionohaul.channel.End;
import org.ionohaul.channel.SkyWatch;
import org.ionohaul.channel.WatchSummary;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.rendering.TimeScale;
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
        for (End end : End.values()) {
            lines.add("");
            lines.add(SkyTables.heading(view, end));
            addStrip(lines, view.at(end));
        }
        lines.add("");
        lines.addAll(new TextTable(SkyTables.ends(view)).lines(WIDTH));
        lines.add("");
        lines.addAll(TextWrap.lines(SkyTables.needs(view).caption() + ":", "", WIDTH));
        lines.addAll(new TextTable(SkyTables.needs(view)).lines(WIDTH));
        return lines;
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
