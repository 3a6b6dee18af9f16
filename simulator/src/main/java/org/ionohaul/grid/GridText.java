package org.ionohaul.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.report.CaseName;
import org.ionohaul.report.StudyWords;
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
    /** Copies the lists. */
    public GridText {
        keys = List.copyOf(keys);
        maps = List.copyOf(maps);
    }

    /** Returns the lines. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>(TextWrap.lines(scenario.title(), "", width));
        List<CaseName> names = CaseName.all(scenario, keys);
        GridWords words = new GridWords(scenario);
        for (int i = 0; i < tally.cases().size(); i++) {
            lines.add("");
            lines.addAll(TextWrap.lines(names.get(i).heading(), "", width));
            words.sentences(tally.cases().get(i)).forEach(it -> lines.addAll(TextWrap.lines(it, "  ", width)));
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
        lines.addAll(TextWrap.lines(GridWords.READING, "", width));
        lines.addAll(TextWrap.lines(StudyWords.CAUTION, "", width));
        return lines;
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
                        : new GridWords(scenario).letters(it.leaders()) + " "
                                + OddsText.percent(it.firstDeadlineShare()).replace(" %", ""))
                .orElse("-");
    }

    private String legend() {
        return "Letters: modes that may be best (" + new GridWords(scenario).legend()
                + "). Numbers: of 100 trials, how many keep the first deadline with the mode that keeps it most often.";
    }
}
