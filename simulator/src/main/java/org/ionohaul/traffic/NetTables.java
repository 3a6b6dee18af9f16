package org.ionohaul.traffic;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.statistics.Estimate;

/** What is found of a net, as tables. */
record NetTables(NetFindings findings) {
    private static final Cell NOTHING = Cell.of("-");

    /** Returns how long each kind of message takes and how sure its deadlines are. */
    Table kinds() {
        List<Double> deadlines = findings.kinds().stream()
                .flatMap(it -> it.kind().deadlinesSeconds().stream())
                .distinct()
                .sorted()
                .toList();
        List<Cell> heads = new ArrayList<>(
                List.of(Cell.of("message"), Cell.of("written"), Cell.of("5 of 10 in"), Cell.of("9 of 10 in")));
        deadlines.forEach(it -> heads.add(Cell.of("in " + TimeText.given(it))));
        heads.add(Cell.of("through"));
        return new Table(
                "From written to delivered",
                heads,
                findings.kinds().stream().map(it -> kind(it, deadlines)).toList());
    }

    private List<Cell> kind(KindFindings kind, List<Double> deadlines) {
        List<Cell> row = new ArrayList<>(List.of(
                Cell.of(name(kind)),
                Cell.of(String.format(Locale.ROOT, "%.1f", kind.writtenPerTrial())),
                Cells.time(kind.half()),
                Cells.time(kind.nineOfTen())));
        for (double deadline : deadlines) {
            int at = kind.kind().deadlinesSeconds().indexOf(deadline);
            row.add(at < 0 ? Cell.of("") : chance(kind.deadlines().get(at)));
        }
        row.add(chance(kind.through()));
        return row;
    }

    /** Returns where the time of those goes that get through. */
    Table parts() {
        return new Table(
                "Where the time of those goes that are through, in the mean",
                List.of(
                        Cell.of("message"),
                        Cell.of("waiting"),
                        Cell.of("handing over"),
                        Cell.of("calls each"),
                        Cell.of("given up")),
                findings.kinds().stream()
                        .map(it -> List.of(
                                Cell.of(name(it)),
                                time(it.waitSeconds()),
                                time(it.handOverSeconds()),
                                it.calls().map(NetTables::number).orElse(NOTHING),
                                chance(it.givenUp())))
                        .toList());
    }

    /** Returns what a kind of message is called. */
    String name(KindFindings kind) {
        return kind.name(findings.scenario().groups().size() > 1);
    }

    static Cell chance(Optional<Estimate> chance) {
        return chance.map(Cells::chance).orElse(NOTHING);
    }

    private static Cell time(Optional<Estimate> seconds) {
        return seconds.map(Cells::time).orElse(NOTHING);
    }

    static Cell number(Estimate estimate) {
        return new Cell(
                String.format(Locale.ROOT, "%.1f", estimate.value()),
                Double.isInfinite(estimate.high())
                        ? ""
                        : String.format(Locale.ROOT, "%.1f-%.1f", estimate.low(), estimate.high()));
    }
}
