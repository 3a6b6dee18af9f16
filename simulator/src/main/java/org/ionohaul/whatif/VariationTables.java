package org.ionohaul.whatif;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.CasePoint;
import org.ionohaul.analysis.ModePoint;
import org.ionohaul.analysis.PairedEffect;
import org.ionohaul.analysis.Variation;
import org.ionohaul.analysis.VariationPoint;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.report.CaseName;
import org.ionohaul.scenario.KeyName;
import org.ionohaul.scenario.Mode;
import org.ionohaul.study.KeySweep;

/** The tables of a variation. */
final class VariationTables {
    private static final String NOT_DONE = "not done";

    private final Variation variation;
    private final List<Mode> modes;
    private final List<CaseName> cases;

    VariationTables(Variation variation, List<CaseName> cases) {
        this.variation = variation;
        this.modes = variation.scenario().modes();
        this.cases = List.copyOf(cases);
    }

    /** Returns what a mode comes to, a row a value, each number with its interval. */
    Table ofMode(int caseIndex, int mode) {
        List<Cell> heads = joined(Stream.of(
                Stream.of(inputs()),
                deadlineHeads(caseIndex).map(Cell::of),
                Stream.of(Cell.of("5 of 10"), Cell.of("9 of 10"), new Cell("change", "median trial")),
                deadlineHeads(caseIndex).map(it -> new Cell("change " + it, "of 100 trials"))));
        return new Table(
                modes.get(mode).title() + ", every number with its range",
                heads,
                rows((point, isFirst) ->
                        ofMode(point, point.cases().get(caseIndex).modes().get(mode), isFirst)));
    }

    private static List<Cell> ofMode(VariationPoint point, ModePoint mode, boolean isFirst) {
        return joined(Stream.of(
                Stream.of(values(point)),
                mode.deadlines().stream().map(it -> Cells.chance(it.chance())),
                Stream.of(Cells.time(mode.medianSeconds()), Cells.time(mode.ninthSeconds())),
                isFirst
                        ? Stream.generate(() -> Cell.of("-"))
                                .limit(1 + mode.deadlines().size())
                        : changes(mode.effect())));
    }

    private static Stream<Cell> changes(PairedEffect effect) {
        return Stream.concat(
                Stream.of(new Cell(PointWords.change(effect), PointWords.changeRange(effect))),
                effect.deadlineChanges().stream().map(PointWords::points));
    }

    /** Returns what a mode comes to, a line a value, with the change's interval alone. */
    Table brief(int caseIndex, int mode) {
        List<Cell> heads = joined(Stream.of(
                Stream.of(inputs()),
                deadlineHeads(caseIndex).map(Cell::of),
                Stream.of(Cell.of("5 of 10"), Cell.of("9 of 10"), new Cell("change", "range"))));
        return new Table(
                modes.get(mode).title(),
                heads,
                rows((point, isFirst) ->
                        brief(point, point.cases().get(caseIndex).modes().get(mode), isFirst)));
    }

    private static List<Cell> brief(VariationPoint point, ModePoint mode, boolean isFirst) {
        return joined(Stream.of(
                Stream.of(values(point)),
                mode.deadlines().stream()
                        .map(it -> Cell.of(OddsText.percent(it.chance().value()))),
                Stream.of(PointWords.time(mode.medianSeconds()), PointWords.time(mode.ninthSeconds()))
                        .map(Cell::of),
                Stream.of(
                        isFirst
                                ? Cell.of("-")
                                : new Cell(PointWords.change(mode.effect()), PointWords.changeRange(mode.effect())))));
    }

    /** Returns which mode is best and by how much, a row a value or combination of values. */
    Table best(int caseIndex) {
        return new Table(
                "Which mode is best, and by how much",
                List.of(inputs(), Cell.of("best"), Cell.of("margin")),
                rows((point, isFirst) -> List.of(
                        values(point),
                        Cell.of(PointWords.best(point.cases().get(caseIndex), modes)),
                        Cell.of(margin(point.cases().get(caseIndex), caseIndex)))));
    }

    String margin(CasePoint point, int caseIndex) {
        return PointWords.margin(point, modes, cases.get(caseIndex).deadlinesSeconds());
    }

    /** Returns which mode is best, the first key's values down, the second's across. */
    Table bestMap(int caseIndex) {
        return map(
                "Which mode is best; below it the time that it keeps on 9 of 10 trials",
                caseIndex,
                it -> new Cell(
                        PointWords.best(it, modes),
                        PointWords.time(it.modes().get(it.best()).ninthSeconds())));
    }

    /** Returns something of each point of a case, the first key's values down, the second's across. */
    Table map(String caption, int caseIndex, Function<CasePoint, Cell> cell) {
        KeySweep down = variation.sweeps().get(0);
        KeySweep across = variation.sweeps().get(1);
        int columns = across.values().size();
        return new Table(
                caption,
                joined(Stream.of(
                        Stream.of(Cell.of(name(down) + " \\ " + name(across))),
                        across.values().stream().map(Cell::of))),
                IntStream.range(0, down.values().size())
                        .mapToObj(row -> joined(Stream.of(
                                Stream.of(Cell.of(down.values().get(row))),
                                IntStream.range(row * columns, (row + 1) * columns)
                                        .mapToObj(at -> at < variation.points().size()
                                                ? cell.apply(variation
                                                        .points()
                                                        .get(at)
                                                        .cases()
                                                        .get(caseIndex))
                                                : Cell.of(NOT_DONE)))))
                        .toList());
    }

    /** Where it is stands in the sentences above; of two it tells one from the other. */
    private Cell inputs() {
        List<KeySweep> sweeps = variation.sweeps();
        return Cell.of(
                sweeps.size() == 1
                        ? KeyName.of(variation.scenario(), sweeps.get(0).key()).quantity()
                        : String.join(", ", sweeps.stream().map(this::name).toList()));
    }

    private String name(KeySweep sweep) {
        return KeyName.of(variation.scenario(), sweep.key()).words();
    }

    private static Cell values(VariationPoint point) {
        return Cell.of(String.join(", ", point.values()));
    }

    /** Heads of the deadlines; by number where the deadlines themselves are varied. */
    Stream<String> deadlineHeads(int caseIndex) {
        List<Double> first = deadlines(variation.points().get(0), caseIndex);
        boolean areAlike = variation.points().stream()
                .allMatch(it -> deadlines(it, caseIndex).equals(first));
        return IntStream.range(0, first.size())
                .mapToObj(i -> areAlike ? "by " + TimeText.given(first.get(i)) : "by deadline " + (i + 1));
    }

    private static List<Double> deadlines(VariationPoint point, int caseIndex) {
        return point.cases().get(caseIndex).modes().get(0).deadlines().stream()
                .map(it -> it.deadlineSeconds())
                .toList();
    }

    private List<List<Cell>> rows(BiFunction<VariationPoint, Boolean, List<Cell>> row) {
        return IntStream.range(0, variation.points().size())
                .mapToObj(i -> row.apply(variation.points().get(i), i == 0))
                .toList();
    }

    private static List<Cell> joined(Stream<Stream<Cell>> parts) {
        return parts.flatMap(it -> it).toList();
    }
}
