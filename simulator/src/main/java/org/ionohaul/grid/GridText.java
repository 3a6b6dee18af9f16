package org.ionohaul.grid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.report.CaseName;
import org.ionohaul.report.StudyWords;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;

/**
 * What a grid comes to, for a terminal.
 *
 * @param scenario the scenario of its first row
 * @param keys what differs from row to row
 * @param tally how its rows divide
 * @param maps its answers laid out by two columns; none if that was not asked for
 * @param width how many characters a line may have
 */
public record GridText(Scenario scenario, List<String> keys, GridTally tally, List<GridMap> maps, int width) {
    /** Letters tell modes apart in the narrow places of a map. */
    private static final String LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    /** Copies the lists. */
    public GridText {
        keys = List.copyOf(keys);
        maps = List.copyOf(maps);
    }

    /** Returns the lines. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>(TextWrap.lines(scenario.title(), "", width));
        List<CaseName> names = CaseName.all(scenario, keys);
        for (int i = 0; i < tally.cases().size(); i++) {
            lines.add("");
            lines.addAll(TextWrap.lines(names.get(i).heading(), "", width));
            add(lines, tally.cases().get(i));
            if (i < maps.size()) {
                lines.add("");
                lines.addAll(new TextTable(table(maps.get(i))).lines(width));
            }
        }
        if (!maps.isEmpty()) {
            lines.add("");
            lines.addAll(TextWrap.lines(legend(), "", width));
        }
        lines.add("");
        lines.addAll(TextWrap.lines(
                "A row counts as kept or missed only beyond chance, which errs in up to 5 of 100 rows; a mode is named"
                        + " only where the paired tests of its row support it against every other.",
                "",
                width));
        lines.addAll(TextWrap.lines(StudyWords.CAUTION, "", width));
        return lines;
    }

    private void add(List<String> lines, GridTally.OfCase it) {
        int rows =
                it.rowsByLeaders().values().stream().mapToInt(Integer::intValue).sum();
        String leaders = it.rowsByLeaders().entrySet().stream()
                .sorted(Map.Entry.<List<String>, Integer>comparingByValue().reversed())
                .map(found -> names(found.getKey()) + " on " + SizeText.grouped(found.getValue()))
                .collect(Collectors.joining("; "));
        lines.addAll(TextWrap.lines(
                "Best of " + SizeText.grouped(rows) + (rows == 1 ? " row: " : " rows: ") + leaders + ".", "  ", width));
        for (GridTally.OfDeadline deadline : it.deadlines()) {
            lines.addAll(TextWrap.lines(
                    "By " + time(deadline) + ", on 9 of 10 trials with the mode that suits: kept on "
                            + SizeText.grouped(deadline.kept()) + ", missed with every mode on "
                            + SizeText.grouped(deadline.missed()) + ", open on " + SizeText.grouped(deadline.open())
                            + (deadline.open() == 0 ? "." : " (more trials would tell)."),
                    "  ",
                    width));
        }
    }

    private static String time(GridTally.OfDeadline deadline) {
        String shortest = TimeText.given(deadline.shortestSeconds());
        return deadline.shortestSeconds() == deadline.longestSeconds()
                ? shortest
                : shortest + " to " + TimeText.given(deadline.longestSeconds());
    }

    private String names(List<String> modes) {
        if (modes.isEmpty()) {
            return "nothing arrives";
        }
        return modes.size() > 2 && modes.size() == scenario.modes().size()
                ? "any mode"
                : modes.stream().map(this::title).collect(Collectors.joining(" or "));
    }

    private String title(String name) {
        return scenario.modes().stream()
                .filter(it -> it.name().equals(name))
                .map(Mode::title)
                .findFirst()
                .orElse(name);
    }

    private Table table(GridMap map) {
        List<Cell> heads = Stream.concat(Stream.of(""), map.across().stream())
                .map(Cell::of)
                .toList();
        return new Table(
                "",
                heads,
                IntStream.range(0, map.down().size())
                        .mapToObj(row -> Stream.concat(
                                        Stream.of(map.down().get(row)),
                                        map.places().get(row).stream().map(this::text))
                                .map(Cell::of)
                                .toList())
                        .toList());
    }

    private String text(Optional<GridMap.Place> place) {
        return place.map(it -> it.leaders().isEmpty()
                        ? "none"
                        : it.leaders().stream().map(this::letter).sorted().collect(Collectors.joining()) + " "
                                + OddsText.percent(it.firstDeadlineShare()).replace(" %", ""))
                .orElse("-");
    }

    private String letter(String mode) {
        return LETTERS.substring(place(mode), place(mode) + 1);
    }

    private int place(String mode) {
        return scenario.modes().stream().map(Mode::name).sorted().toList().indexOf(mode) % LETTERS.length();
    }

    private String legend() {
        return "Letters: modes that may be best ("
                + scenario.modes().stream()
                        .sorted(Comparator.comparing(Mode::name))
                        .map(it -> letter(it.name()) + " " + it.title())
                        .collect(Collectors.joining(", "))
                + "). Numbers: of 100 trials, how many keep the first deadline with the mode that keeps it most often.";
    }
}
