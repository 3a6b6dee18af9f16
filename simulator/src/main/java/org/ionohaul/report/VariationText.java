package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.CaseSummary;
import org.ionohaul.study.Comparison;
import org.ionohaul.study.DeadlineChance;
import org.ionohaul.study.KeySweep;
import org.ionohaul.study.ModeSummary;
import org.ionohaul.study.PairedEffect;
import org.ionohaul.study.Variation;
import org.ionohaul.study.VariationPoint;

/** What changes when keys are varied, for a terminal: a table a mode, then which mode is best where. */
public final class VariationText {
    static final String CHANGE =
            "Change: of the time in the median evening, against the first line or the scenario as it stands, under the same"
                    + " sky; in brackets if it could be chance.";

    private static final int WIDTH = 80;

    private final Variation variation;

    /** Prepares the report of a variation with at least one point. */
    public VariationText(Variation variation) {
        this.variation = variation;
    }

    /** Returns the report's lines. */
    public List<String> lines() {
        VariationPoint first = variation.points().get(0);
        List<String> lines = new ArrayList<>(TextWrap.lines(variation.scenario().title(), "", WIDTH));
        lines.addAll(TextWrap.lines(
                SizeText.grouped(first.cases().get(0).modes().get(0).trials())
                        + " simulated evenings a value, the same skies for every value and mode, seed "
                        + variation.scenario().seed() + ". Varied: " + String.join(" and ", keys()) + ".",
                "",
                WIDTH));
        for (int i = 0; i < first.cases().size(); i++) {
            lines.add("");
            addCase(lines, i);
        }
        lines.add("");
        lines.addAll(TextWrap.lines(CHANGE, "", WIDTH));
        lines.addAll(TextWrap.lines(StudyWords.CAUTION, "", WIDTH));
        return lines;
    }

    private void addCase(List<String> lines, int index) {
        CaseSummary summary = variation.points().get(0).cases().get(index);
        String heading = CaseWords.heading(summary.transfer()) + ", " + CaseWords.route(variation.scenario(), summary);
        lines.addAll(TextWrap.lines(heading, "", WIDTH));
        lines.add("=".repeat(Math.min(WIDTH, heading.length())));
        for (int mode = 0; mode < summary.modes().size(); mode++) {
            lines.add("  " + summary.modes().get(mode).mode().title());
            lines.addAll(new TextTable(ofMode(index, mode)).lines(WIDTH));
            lines.add("");
        }
        lines.add("  Best mode");
        lines.addAll(new TextTable(variation.sweeps().size() == 2 ? bestMap(index) : best(index)).lines(WIDTH));
    }

    private List<String> keys() {
        return variation.sweeps().stream().map(KeySweep::key).toList();
    }

    private Table ofMode(int caseIndex, int mode) {
        ModeSummary first =
                variation.points().get(0).cases().get(caseIndex).modes().get(mode);
        List<Cell> heads = cells(Stream.of(
                Stream.of(String.join(", ", keys())),
                first.deadlines().stream().map(it -> "by " + TimeText.given(it.deadlineSeconds())),
                Stream.of("5 of 10", "9 of 10", "change")));
        List<List<Cell>> rows = variation.points().stream()
                .map(point -> row(
                        point,
                        point.cases().get(caseIndex).modes().get(mode),
                        point.effects().get(caseIndex).get(mode)))
                .toList();
        return new Table("By value", heads, rows);
    }

    private static List<Cell> row(VariationPoint point, ModeSummary mode, PairedEffect effect) {
        return cells(Stream.of(
                Stream.of(String.join(", ", point.values())),
                mode.deadlines().stream().map(DeadlineChance::chance).map(it -> OddsText.percent(it.value())),
                Stream.of(time(mode.medianSeconds()), time(mode.ninthSeconds()), change(effect))));
    }

    private static List<Cell> cells(Stream<Stream<String>> parts) {
        return parts.flatMap(part -> part).map(Cell::of).toList();
    }

    static String time(Estimate seconds) {
        return Double.isInfinite(seconds.value()) ? "never" : TimeText.clock(seconds.value());
    }

    static String change(PairedEffect effect) {
        double seconds = effect.medianChangeSeconds().value();
        if (Double.isInfinite(seconds)) {
            return seconds < 0 ? "arrives" : "fails";
        }
        String text = seconds == 0 ? "0:00" : (seconds < 0 ? "-" : "+") + TimeText.clock(Math.abs(seconds));
        return effect.pValue() < 1 - ModeSummary.CONFIDENCE ? text : "(" + text + ")";
    }

    private Table best(int caseIndex) {
        List<Cell> heads = cells(Stream.of(Stream.of(String.join(", ", keys()), "best", "first before the next")));
        List<List<Cell>> rows = variation.points().stream()
                .map(point -> cells(Stream.of(
                        Stream.of(String.join(", ", point.values())),
                        bestWords(point.cases().get(caseIndex)))))
                .toList();
        return new Table("Best mode by value", heads, rows);
    }

    private static Stream<String> bestWords(CaseSummary summary) {
        String margin = summary.comparisons().stream()
                .findFirst()
                .map(Comparison::firstBeforeShare)
                .map(it -> "in " + OddsText.percent(it.value()) + " of evenings")
                .orElse("");
        return Stream.of(summary.best().mode().title(), margin);
    }

    private Table bestMap(int caseIndex) {
        List<String> across = variation.sweeps().get(1).values();
        List<Cell> heads = cells(Stream.of(
                Stream.of(variation.sweeps().get(0).key() + " \\ "
                        + variation.sweeps().get(1).key()),
                across.stream()));
        List<List<Cell>> rows = IntStream.range(
                        0, variation.sweeps().get(0).values().size())
                .mapToObj(row -> mapRow(caseIndex, row, across.size()))
                .toList();
        return new Table("Best mode by both values", heads, rows);
    }

    private List<Cell> mapRow(int caseIndex, int row, int columns) {
        Stream<Cell> cells = variation.points().subList(row * columns, (row + 1) * columns).stream()
                .map(point -> point.cases().get(caseIndex).best())
                .map(best -> new Cell(best.mode().title(), time(best.ninthSeconds())));
        return Stream.concat(
                        Stream.of(Cell.of(variation.sweeps().get(0).values().get(row))), cells)
                .toList();
    }
}
