package org.ionohaul.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.Promise;
import org.ionohaul.analysis.PromiseTable;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.SizeGrid;
import org.ionohaul.study.StudyResult;

/** What may be promised, for a terminal: the plain sentence first, then a table a mode. */
public final class PromiseReport {
    private static final int WIDTH = 80;
    private static final List<Double> USUAL_CONFIDENCES = List.of(0.5, 0.8, 0.9, 0.95);
    private static final List<Integer> ROUND_MINUTES =
            List.of(1, 2, 3, 5, 7, 10, 15, 20, 30, 45, 60, 90, 120, 180, 240);
    private static final double SHORTEST_DEADLINE_FACTOR = 1.0 / 3;

    /** The longest deadline in a report, as a multiple of the one asked for. */
    public static final double LONGEST_DEADLINE_FACTOR = 2;

    private final StudyResult result;
    private final double confidence;

    /**
     * Prepares the report.
     *
     * @param result a study of {@link org.ionohaul.study.SizeTransfers}, with at least one trial done
     * @param confidence how sure the promise must be, above 0, below 1
     */
    public PromiseReport(StudyResult result, double confidence) {
        this.result = result;
        this.confidence = confidence;
    }

    /**
     * Returns what may be promised by a deadline.
     *
     * @param deadlineSeconds in seconds after pressing send; twice of it must have been watched
     */
    public List<String> largestFiles(double deadlineSeconds) {
        return lines(
                tables -> largestFiles(tables, deadlineSeconds),
                "Small print under a size: what the trials leave open with 95 % confidence; promise the smaller one when"
                        + " it matters. Sizes are as they go on the air, rounded down to preferred numbers.");
    }

    /**
     * Returns the deadlines that may be promised for a file.
     *
     * @param bytes its size, at most that of the longest transfer sent
     */
    public List<String> deadlines(long bytes) {
        long tried = SizeGrid.BYTES.get(SizeGrid.indexNotBelow(bytes));
        String rounding =
                tried == bytes ? "" : " Answered for " + SizeText.size(tried) + ", the next larger size that is tried.";
        return lines(
                tables -> deadlines(tables, bytes),
                "Small print under a time: what the trials leave open with 95 % confidence; promise the later one when it"
                        + " matters. Open: on so many trials it is not through within the time watched. The size is as"
                        + " it goes on the air." + rounding);
    }

    private List<String> lines(Function<List<PromiseTable>, List<String>> ofDirection, String smallPrint) {
        Scenario scenario = result.scenario();
        List<String> lines = new ArrayList<>(TextWrap.lines(scenario.title(), "", WIDTH));
        lines.addAll(TextWrap.lines(StudyWords.basis(result), "", WIDTH));
        for (Direction direction :
                result.cases().stream().map(it -> it.direction()).distinct().toList()) {
            String heading = "From " + scenario.station(direction.sender()).name() + " to "
                    + scenario.station(direction.receiver()).name();
            lines.add("");
            lines.add(heading);
            lines.add("=".repeat(heading.length()));
            lines.addAll(ofDirection.apply(PromiseTable.of(result, direction)));
        }
        lines.add("");
        lines.addAll(TextWrap.lines(smallPrint, "", WIDTH));
        lines.addAll(TextWrap.lines(StudyWords.CAUTION, "", WIDTH));
        return lines;
    }

    private List<String> largestFiles(List<PromiseTable> tables, double deadlineSeconds) {
        PromiseTable best = tables.stream()
                .max(Comparator.comparingDouble(it ->
                        it.largestFile(deadlineSeconds, confidence).bytes().value()))
                .orElseThrow();
        Estimate bytes = best.largestFile(deadlineSeconds, confidence).bytes();
        String sentence = bytes.value() == 0
                ? "Within " + TimeText.given(deadlineSeconds) + " not even 1 kB is through on "
                        + OddsText.odds(confidence) + " trials, with any mode."
                : "Within " + TimeText.given(deadlineSeconds) + " up to " + size(bytes.value()) + " is through on "
                        + OddsText.odds(confidence) + " trials, with "
                        + best.mode().title() + " (" + range(bytes) + " with 95 % confidence).";
        List<String> lines = new ArrayList<>(TextWrap.lines(sentence, "  ", WIDTH));
        for (PromiseTable table : tables) {
            lines.add("");
            lines.add("  " + table.mode().title());
            lines.addAll(new TextTable(byDeadline(table, deadlineSeconds)).lines(WIDTH));
        }
        return lines;
    }

    /** The usual ones and the one asked for. */
    private Stream<Double> confidences() {
        return Stream.concat(USUAL_CONFIDENCES.stream(), Stream.of(confidence))
                .distinct()
                .sorted();
    }

    /** The one asked for, among round ones that are not too far from it. */
    private static DoubleStream roundDeadlines(double deadlineSeconds) {
        DoubleStream near = ROUND_MINUTES.stream()
                .mapToDouble(minutes -> 60 * minutes)
                .filter(it -> it >= SHORTEST_DEADLINE_FACTOR * deadlineSeconds
                        && it <= LONGEST_DEADLINE_FACTOR * deadlineSeconds);
        return DoubleStream.concat(near, DoubleStream.of(deadlineSeconds))
                .distinct()
                .sorted();
    }

    private Table byDeadline(PromiseTable table, double deadlineSeconds) {
        List<Cell> heads = Stream.concat(
                        Stream.of(Cell.of("within")), confidences().map(it -> Cell.of(OddsText.odds(it))))
                .toList();
        List<List<Cell>> rows = roundDeadlines(deadlineSeconds)
                .mapToObj(deadline -> deadlineRow(table, deadline))
                .toList();
        return new Table("Largest file by deadline and confidence", heads, rows);
    }

    private List<Cell> deadlineRow(PromiseTable table, double deadlineSeconds) {
        return Stream.concat(
                        Stream.of(Cell.of(TimeText.given(deadlineSeconds))),
                        confidences().map(it -> size(table.largestFile(deadlineSeconds, it))))
                .toList();
    }

    private static Cell size(Promise promise) {
        return new Cell(size(promise.bytes().value()), range(promise.bytes()));
    }

    private static String range(Estimate bytes) {
        return size(bytes.low()) + " - " + size(bytes.high());
    }

    private static String size(double bytes) {
        return bytes == 0 ? "nothing" : SizeText.size((long) bytes);
    }

    private List<String> deadlines(List<PromiseTable> tables, long bytes) {
        PromiseTable best = tables.stream()
                .min(Comparator.comparingDouble(
                        it -> it.deadline(bytes, confidence).value()))
                .orElseThrow();
        Estimate seconds = best.deadline(bytes, confidence);
        String sentence = Double.isInfinite(seconds.value())
                ? SizeText.size(bytes) + " can't be promised for " + OddsText.odds(confidence)
                        + " trials within the time watched, with any mode."
                : SizeText.size(bytes) + " is through within " + TimeText.plan(seconds.value()) + " on "
                        + OddsText.odds(confidence) + " trials, with "
                        + best.mode().title() + " (" + times(seconds) + " with 95 % confidence).";
        List<Cell> heads = Stream.concat(
                        Stream.of(Cell.of("mode")), confidences().map(it -> Cell.of(OddsText.odds(it))))
                .toList();
        List<List<Cell>> rows =
                tables.stream().map(table -> modeRow(table, bytes)).toList();
        List<String> lines = new ArrayList<>(TextWrap.lines(sentence, "  ", WIDTH));
        lines.add("");
        lines.addAll(new TextTable(new Table("Deadline by mode and confidence", heads, rows)).lines(WIDTH));
        return lines;
    }

    private List<Cell> modeRow(PromiseTable table, long bytes) {
        return Stream.concat(
                        Stream.of(Cell.of(table.mode().title())),
                        confidences().map(it -> time(table.deadline(bytes, it))))
                .toList();
    }

    private static Cell time(Estimate seconds) {
        return new Cell(time(seconds.value()), times(seconds));
    }

    private static String times(Estimate seconds) {
        return time(seconds.low()) + " - " + time(seconds.high());
    }

    private static String time(double seconds) {
        return Double.isInfinite(seconds) ? "open" : TimeText.clock(seconds);
    }
}
