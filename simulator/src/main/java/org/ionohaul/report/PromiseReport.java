package org.ionohaul.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.Leaders;
import org.ionohaul.analysis.Promise;
import org.ionohaul.analysis.PromiseTable;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.SizeGrid;
import org.ionohaul.study.StudyResult;

/** What may be promised, for a terminal: the plain sentence first, then a table a mode. */
public final class PromiseReport {
    private static final int WIDTH = 80;
    private static final List<Double> USUAL_CONFIDENCES = List.of(0.5, 0.8, 0.9, 0.95);
    private static final List<Integer> ROUND_MINUTES =
            List.of(1, 2, 3, 5, 7, 10, 15, 20, 30, 45, 60, 90, 120, 180, 240);
    private static final Comparator<Promise> SAFEST_FIRST = Comparator.comparingLong(Promise::safeBytes)
            .thenComparingDouble(it -> it.bytes().value());
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
     * @param deadlineSeconds in seconds after pressing send; within the time watched
     */
    public List<String> largestFiles(double deadlineSeconds) {
        return lines(
                direction -> largestFiles(PromiseTable.of(result, direction), deadlineSeconds),
                "Sizes are safe: on at least so many trials such a file is through, which is made to hold in 95 of 100"
                        + " such studies, whichever mode is picked. Small print: the size up to which the trials leave it"
                        + " open. Limit: what keeps most of the trials that are late from having the next larger file"
                        + " through. Sizes are as they go on the air, rounded down to preferred numbers.");
    }

    /**
     * Returns how surely a file is through by a deadline, and the deadlines that may be promised for it.
     *
     * @param study a study of that one file
     * @param confidence how sure the promise must be, above 0, below 1
     */
    public static List<String> ofFile(StudyResult study, double confidence) {
        return new PromiseReport(study, confidence).ofFile();
    }

    private List<String> ofFile() {
        StudySummary summary = StudySummary.of(result);
        return lines(
                direction -> summary.cases().stream()
                        .filter(it -> it.direction() == direction)
                        .flatMap(it -> new FilePromiseWords(
                                        it, result, confidence, confidences().toList())
                                .lines(WIDTH).stream())
                        .toList(),
                "Times are safe: on at least so many trials the file is through by then, which is made to hold in 95 of"
                        + " 100 such studies, whichever mode is picked. Open: on so many trials it may not be through"
                        + " within the time watched. The size is as it goes on the air.");
    }

    private List<String> lines(Function<Direction, List<String>> ofDirection, String smallPrint) {
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
            lines.addAll(ofDirection.apply(direction));
        }
        lines.add("");
        lines.addAll(TextWrap.lines(smallPrint, "", WIDTH));
        lines.addAll(TextWrap.lines(StudyWords.CAUTION, "", WIDTH));
        return lines;
    }

    private List<String> largestFiles(List<PromiseTable> tables, double deadlineSeconds) {
        List<String> lines = new ArrayList<>(TextWrap.lines(headline(tables, deadlineSeconds), "  ", WIDTH));
        for (PromiseTable table : tables) {
            lines.add("");
            lines.add("  " + table.mode().title());
            lines.addAll(new TextTable(byDeadline(table, deadlineSeconds)).lines(WIDTH));
        }
        return lines;
    }

    private String headline(List<PromiseTable> tables, double deadlineSeconds) {
        PromiseTable best = tables.stream()
                .max(Comparator.comparing(it -> it.largestFile(deadlineSeconds, confidence), SAFEST_FIRST))
                .orElseThrow();
        Promise promise = best.largestFile(deadlineSeconds, confidence);
        String within = "Within " + TimeText.given(deadlineSeconds) + " ";
        if (!promise.areTrialsEnough()) {
            return within + "nothing can be promised safely on so few trials: " + promise.fewestTrials()
                    + " are needed. On " + OddsText.odds(confidence) + " of those simulated up to "
                    + size(promise.bytes().value()) + " was through, with "
                    + best.mode().title() + ".";
        }
        String limit = promise.limit().map(LimitWords::sentence).orElse("");
        if (promise.safeBytes() == 0) {
            return within + "not even " + SizeText.size(SizeGrid.BYTES.get(0)) + " can be promised for "
                    + OddsText.odds(confidence) + " trials, with any mode." + limit;
        }
        return within + "promise up to " + size(promise.bytes().low()) + " with "
                + best.mode().title() + ": on at least " + OddsText.odds(confidence)
                + " trials it is through by then (perhaps up to "
                + size(promise.bytes().high()) + ")." + limit
                + told(tables, promise);
    }

    /** Whether it is merit that the mode comes first, with a file of the size promised. */
    private static String told(List<PromiseTable> tables, Promise promise) {
        Leaders leaders = PromiseTable.leaders(tables, promise.safeBytes(), promise.deadlineSeconds());
        return leaders.alike()
                .map(alike -> " With such a file "
                        + LeaderWords.sentence(
                                leaders.modes().stream()
                                        .map(it -> tables.get(it).mode().title())
                                        .toList(),
                                alike,
                                "by then"))
                .orElse("");
    }

    /** The usual ones and the one asked for. */
    private Stream<Double> confidences() {
        return Stream.concat(USUAL_CONFIDENCES.stream(), Stream.of(confidence))
                .distinct()
                .sorted();
    }

    /** The one asked for, among round ones that are not too far from it. */
    private DoubleStream roundDeadlines(double deadlineSeconds) {
        DoubleStream near = ROUND_MINUTES.stream()
                .mapToDouble(minutes -> 60 * minutes)
                .filter(it -> it >= SHORTEST_DEADLINE_FACTOR * deadlineSeconds
                        && it <= result.scenario().horizonSeconds());
        return DoubleStream.concat(near, DoubleStream.of(deadlineSeconds))
                .distinct()
                .sorted();
    }

    private Table byDeadline(PromiseTable table, double deadlineSeconds) {
        List<Cell> heads = Stream.of(
                        Stream.of(Cell.of("within")),
                        confidences().map(it -> Cell.of(OddsText.odds(it))),
                        Stream.of(new Cell("limit", "at " + OddsText.odds(confidence))))
                .flatMap(it -> it)
                .toList();
        List<List<Cell>> rows = roundDeadlines(deadlineSeconds)
                .mapToObj(deadline -> deadlineRow(table, deadline))
                .toList();
        return new Table("Largest file by deadline and confidence", heads, rows);
    }

    private List<Cell> deadlineRow(PromiseTable table, double deadlineSeconds) {
        return Stream.of(
                        Stream.of(Cell.of(TimeText.given(deadlineSeconds))),
                        confidences().map(it -> size(table.largestFile(deadlineSeconds, it))),
                        Stream.of(Cell.of(table.largestFile(deadlineSeconds, confidence)
                                .limit()
                                .map(LimitWords::word)
                                .orElse("none"))))
                .flatMap(it -> it)
                .toList();
    }

    private static Cell size(Promise promise) {
        return promise.areTrialsEnough()
                ? new Cell(
                        size(promise.bytes().low()),
                        "to " + size(promise.bytes().high()))
                : new Cell("?", promise.fewestTrials() + " trials");
    }

    private static String size(double bytes) {
        return bytes == 0 ? "nothing" : SizeText.size((long) bytes);
    }
}
