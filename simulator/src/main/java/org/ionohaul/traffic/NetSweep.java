package org.ionohaul.traffic;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.scenario.KeyName;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.KeySweep;

/**
 * What a net comes to at several values of one key, under the same messages and skies as far as these don't hang on it.
 *
 * @param key the key
 * @param points one for each value, in the order asked for, at least one
 */
public record NetSweep(String key, List<NetPoint> points) {
    private static final int WIDTH = 80;
    private static final List<String> BUSIER = List.of("load", ".count", ".rate");

    /** Copies the list. */
    public NetSweep {
        points = List.copyOf(points);
    }

    /** Returns the lines for a terminal. */
    public List<String> lines() {
        NetFindings first = points.get(0).findings();
        List<String> lines = new ArrayList<>(TextWrap.lines(first.scenario().title(), "", WIDTH));
        lines.addAll(TextWrap.lines(basis(), "", WIDTH));
        lines.add("");
        sentences().forEach(it -> lines.addAll(TextWrap.lines(it, "  ", WIDTH)));
        for (Table table : tables()) {
            lines.add("");
            lines.addAll(TextWrap.lines(table.caption() + ":", "  ", WIDTH));
            lines.addAll(new TextTable(table).lines(WIDTH));
        }
        lines.add("");
        lines.addAll(TextWrap.lines(NetWords.RANGES, "", WIDTH));
        return lines;
    }

    /** Returns what people call the key. */
    String name() {
        return KeyName.plain(key);
    }

    /** Returns what was simulated. */
    String basis() {
        return "At " + name() + " = " + points.get(0).value() + ": "
                + new NetWords(points.get(0).findings()).basis();
    }

    /** Returns the answer: where the knee lies, if the key is one by which the net gets busier, else which value is best. */
    List<String> sentences() {
        return knee().map(List::of).orElseGet(() -> points.size() > 1 ? new Ranking(points).sentences() : List.of());
    }

    private Optional<String> knee() {
        boolean getsBusier = BUSIER.stream().anyMatch(key::endsWith);
        List<Double> numbers = getsBusier && points.size() > 1
                ? new KeySweep(key, points.stream().map(NetPoint::value).toList()).numbers()
                : List.of();
        return numbers.isEmpty() ? Optional.empty() : Optional.of(new Knee(name(), rising(numbers)).sentence());
    }

    private List<NetPoint> rising(List<Double> numbers) {
        return IntStream.range(0, points.size())
                .boxed()
                .sorted(Comparator.comparing(numbers::get))
                .map(points::get)
                .toList();
    }

    /** Returns how the net fares at each value, and how each kind of message does. */
    List<Table> tables() {
        List<Table> tables = new ArrayList<>(List.of(net()));
        int kinds = points.get(0).findings().kinds().size();
        for (int kind = 0; kind < kinds; kind++) {
            tables.add(kind(kind));
        }
        return tables;
    }

    private Table net() {
        List<Cell> heads = List.of(
                Cell.of(name()),
                Cell.of("through"),
                Cell.of("wait at end"),
                Cell.of("on the air"),
                Cell.of("2 at once"),
                Cell.of("to busy"),
                Cell.of("fairness"));
        return new Table(
                "The net: share through, messages that wait at the end, time on the air, two or more at once, calling a busy"
                        + " gateway",
                heads,
                points.stream()
                        .map(it -> List.of(
                                Cell.of(it.value()),
                                NetTables.chance(it.findings().through()),
                                NetTables.number(it.findings().backlog().atEnd()),
                                Cells.chance(it.findings().occupied()),
                                Cells.chance(it.findings().collided()),
                                Cells.chance(it.findings().toBusyGateway()),
                                fairness(it.findings().fairness())))
                        .toList());
    }

    private static Cell fairness(Estimate index) {
        return new Cell(
                String.format(Locale.ROOT, "%.2f", index.value()),
                String.format(Locale.ROOT, "%.2f-%.2f", index.low(), index.high()));
    }

    private Table kind(int number) {
        List<Table> each =
                points.stream().map(it -> new NetTables(it.findings()).kinds()).toList();
        List<Cell> heads = new ArrayList<>(each.get(0).heads());
        heads.set(0, Cell.of(name()));
        List<List<Cell>> rows = new ArrayList<>();
        for (int point = 0; point < points.size(); point++) {
            List<Cell> row = new ArrayList<>(each.get(point).rows().get(number));
            row.set(0, Cell.of(points.get(point).value()));
            rows.add(row);
        }
        NetFindings findings = points.get(0).findings();
        return new Table(
                "From written to delivered, "
                        + new NetTables(findings).name(findings.kinds().get(number)),
                heads,
                rows);
    }
}
