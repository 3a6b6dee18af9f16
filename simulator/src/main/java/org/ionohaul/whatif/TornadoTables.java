package org.ionohaul.whatif;

import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.analysis.CasePoint;
import org.ionohaul.analysis.ModePoint;
import org.ionohaul.analysis.Tornado;
import org.ionohaul.analysis.VariationPoint;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.KeyName;
import org.ionohaul.scenario.Mode;

/** The tables of a tornado. */
final class TornadoTables {
    private final Tornado tornado;

    TornadoTables(Tornado tornado) {
        this.tornado = tornado;
    }

    /** Returns what each input does to a mode, a row an end of its range, what matters most first. */
    Table ofMode(int caseIndex, int mode) {
        ModePoint stands = tornado.reference().cases().get(caseIndex).modes().get(mode);
        Stream<Cell> deadlines = stands.deadlines().stream()
                .map(it -> new Cell("by " + TimeText.given(it.deadlineSeconds()), "of 100 trials"));
        List<Cell> heads = Stream.concat(
                        Stream.of(
                                Cell.of("input"),
                                Cell.of("value"),
                                new Cell("change", "median trial"),
                                Cell.of("9 of 10")),
                        deadlines)
                .toList();
        return new Table(
                tornado.scenario().modes().get(mode).title() + ", every change with its range",
                heads,
                tornado.ranked(caseIndex, mode).stream()
                        .flatMap(bar -> Stream.of(bar.low(), bar.high())
                                .map(end -> row(
                                        KeyName.of(tornado.scenario(), bar.key())
                                                .words(),
                                        end,
                                        caseIndex,
                                        mode)))
                        .toList());
    }

    /** Returns which mode is best as the scenario stands and at either end of each input. */
    Table best(int caseIndex, List<Double> deadlinesSeconds) {
        Stream<List<Cell>> ends = tornado.bars().stream()
                .flatMap(bar -> Stream.of(bar.low(), bar.high())
                        .map(end -> best(
                                TornadoWords.end(tornado.scenario(), bar.key(), end),
                                end,
                                caseIndex,
                                deadlinesSeconds)));
        return new Table(
                "Which mode is best, and by how much",
                Stream.of("input", "best", "margin").map(Cell::of).toList(),
                Stream.concat(Stream.of(best("as it stands", tornado.reference(), caseIndex, deadlinesSeconds)), ends)
                        .toList());
    }

    private List<Cell> best(String name, VariationPoint point, int caseIndex, List<Double> deadlinesSeconds) {
        List<Mode> modes = tornado.scenario().modes();
        CasePoint found = point.cases().get(caseIndex);
        return Stream.of(name, PointWords.best(found, modes), PointWords.margin(found, modes, deadlinesSeconds))
                .map(Cell::of)
                .toList();
    }

    private static List<Cell> row(String input, VariationPoint point, int caseIndex, int mode) {
        ModePoint end = point.cases().get(caseIndex).modes().get(mode);
        return Stream.concat(
                        Stream.of(
                                Cell.of(input),
                                Cell.of(point.values().get(0)),
                                new Cell(PointWords.change(end.effect()), PointWords.changeRange(end.effect())),
                                Cells.time(end.ninthSeconds())),
                        end.effect().deadlineChanges().stream().map(PointWords::points))
                .toList();
    }
}
