package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.analysis.Promise;
import org.ionohaul.analysis.SizePromises;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.study.SizeGrid;

/**
 * Which sizes may be promised by a deadline in one direction.
 *
 * @param promises what was worked out
 * @param limits words on what stops larger files
 */
record SizePromiseWords(SizePromises promises, LimitWords limits) {
    List<String> lines(int width) {
        List<String> lines = new ArrayList<>(TextWrap.lines(headline(), "  ", width));
        for (SizePromises.OfMode mode : promises.modes()) {
            lines.add("");
            lines.add("  " + mode.mode().title());
            lines.addAll(new TextTable(byDeadline(mode)).lines(width));
            lines.addAll(TextWrap.lines(limits.byDeadline(mode), "  ", width));
        }
        return lines;
    }

    private String title(int mode) {
        return promises.modes().get(mode).mode().title();
    }

    /** Returns what may be promised by the deadline asked for. */
    String headline() {
        Promise promise = promises.modes().get(promises.best()).asked();
        String odds = OddsText.odds(promises.confidence());
        String within = "Within " + TimeText.given(promises.deadlineSeconds()) + " ";
        if (!promise.areTrialsEnough()) {
            return within + "nothing can be promised safely on so few trials: " + promise.fewestTrials()
                    + " are needed. On " + odds + " of those simulated up to "
                    + size(promise.bytes().value()) + " was through with one mode at least.";
        }
        String stops = limits.stops(promise.limits());
        if (promise.safeBytes() == 0) {
            return within + "not even " + SizeText.size(SizeGrid.BYTES.get(0)) + " can be promised for " + odds
                    + " trials, with any mode." + stops;
        }
        return within + "promise up to " + size(promise.bytes().low()) + " with " + title(promises.best())
                + ": on at least " + odds + " trials it is through by then (perhaps up to "
                + size(promise.bytes().high()) + ")." + stops + alike();
    }

    /** Whether it is merit that the mode comes first, with a file of the size promised. */
    private String alike() {
        return promises.leaders()
                .flatMap(leaders -> leaders.alike()
                        .map(alike -> " With such a file "
                                + LeaderWords.sentence(
                                        leaders.modes().stream()
                                                .map(this::title)
                                                .toList(),
                                        alike,
                                        "by then")))
                .orElse("");
    }

    /** Returns the largest files of a mode by deadline and confidence. */
    Table byDeadline(SizePromises.OfMode mode) {
        List<Cell> heads = Stream.concat(
                        Stream.of(Cell.of("within")),
                        promises.confidences().stream().map(it -> Cell.of(OddsText.odds(it))))
                .toList();
        List<List<Cell>> rows = mode.deadlines().stream()
                .map(row -> Stream.concat(
                                Stream.of(Cell.of(TimeText.given(row.asked().deadlineSeconds()))),
                                row.byConfidence().stream().map(SizePromiseWords::size))
                        .toList())
                .toList();
        return new Table("Largest file by deadline and confidence", heads, rows);
    }

    /** Returns the safe size of a promise in words. */
    String safe(Promise promise) {
        return promise.areTrialsEnough()
                ? (promise.safeBytes() == 0 ? "" : "up to ")
                        + size(promise.bytes().low())
                : "too few trials, " + promise.fewestTrials() + " are needed";
    }

    private static Cell size(Promise promise) {
        return promise.areTrialsEnough()
                ? new Cell(
                        size(promise.bytes().low()),
                        promise.bytes().low() == promise.bytes().high()
                                ? ""
                                : "to " + size(promise.bytes().high()))
                : new Cell("?", promise.fewestTrials() + " trials");
    }

    private static String size(double bytes) {
        return bytes == 0 ? "nothing" : SizeText.size((long) bytes);
    }
}
