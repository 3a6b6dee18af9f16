package org.ionohaul.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ionohaul.rare.RareChance;
import org.ionohaul.rare.RareMiss;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.statistics.Estimate;

/** How seldom deadlines are missed, in words: the worse end first. */
public final class RareWords {
    private static final String METHOD =
            "Misses too rare to be counted, from trials that come near one and are tried on from there. A range is made to hold"
                    + " the true chance in about 95 of 100 such runs; \"at most\" is its worse end, of either method."
                    + " Fewer than " + RareChance.FEWEST_ARRIVED
                    + " trials that led there tell no range: a larger N may.";
    private static final String WHOSE =
            "These are chances of the sky and the stations as the scenario describes them. What it does not describe (a broken"
                    + " antenna, no power, a mistaken frequency, an operator called away) happens more often than 1 in 1,000, and"
                    + " comes on top.";

    private RareWords() {}

    /** Returns the lines, none longer than asked unless a column is. */
    public static List<String> lines(Scenario scenario, List<RareMiss> misses, int width) {
        List<String> lines = new ArrayList<>(List.of("", "Rare misses", "===========", ""));
        if (misses.isEmpty()) {
            lines.addAll(TextWrap.lines(
                    "No deadline is told here: what a mode misses on more than 1 in 20 trials is counted, not rare.",
                    "",
                    width));
            return lines;
        }
        misses.stream()
                .collect(Collectors.groupingBy(
                        it -> it.transfer().name() + " within " + TimeText.given(it.deadlineSeconds()) + ", "
                                + CaseWords.route(scenario, it.direction()),
                        LinkedHashMap::new,
                        Collectors.toList()))
                .forEach((what, ofModes) -> {
                    lines.addAll(TextWrap.lines(what, "", width));
                    lines.addAll(new TextTable(table(ofModes)).lines(width));
                    lines.add("");
                });
        lines.addAll(TextWrap.lines(METHOD, "", width));
        lines.addAll(TextWrap.lines(WHOSE, "", width));
        return lines;
    }

    private static Table table(List<RareMiss> misses) {
        List<Cell> heads = Stream.of("mode", "misses at most", "about", "counted")
                .map(Cell::of)
                .toList();
        List<List<Cell>> rows = misses.stream()
                .map(it -> List.of(
                        Cell.of(it.mode().title()),
                        bound(it),
                        found(it),
                        Cell.of(SizeText.grouped(it.counted().hits()) + " of "
                                + SizeText.grouped(it.counted().total()))))
                .toList();
        return new Table("", heads, rows);
    }

    private static Cell bound(RareMiss miss) {
        return told(miss)
                .map(it -> Cell.of(oneIn(it.chance().high())))
                .orElseGet(() ->
                        new Cell(oneIn(miss.counted().exact(Estimate.CONFIDENCE).high()), "as counted"));
    }

    private static Cell found(RareMiss miss) {
        return told(miss)
                .map(it -> new Cell(
                        oneIn(it.chance().value()),
                        oneIn(it.chance().low()) + " to " + oneIn(it.chance().high())))
                .orElseGet(() -> new Cell(
                        "not told",
                        miss.found()
                                .map(it -> it.arrived() + " of " + SizeText.grouped(it.begun()) + " led there")
                                .orElse("nothing led there")));
    }

    private static Optional<RareChance> told(RareMiss miss) {
        return miss.found().filter(RareChance::isTold);
    }

    /** Returns a chance as one in so many, to two figures. */
    static String oneIn(double chance) {
        double many = 1 / chance;
        if (many < 10) {
            return "1 in " + String.format(Locale.ROOT, "%.1f", many).replace(".0", "");
        }
        double step = Math.pow(10, Math.floor(Math.log10(many)) - 1);
        return "1 in " + SizeText.grouped(Math.round(many / step) * step);
    }
}
