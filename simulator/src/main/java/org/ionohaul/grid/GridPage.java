package org.ionohaul.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.picture.CellMap;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.report.CaseName;
import org.ionohaul.report.StudyWords;
import org.ionohaul.scenario.KeyName;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.statistics.Estimate;

/**
 * A grid as a page: for each case maps of the best mode, of the first deadline's chance and of the time to plan for, by two
 * columns of the table.
 */
public final class GridPage {
    private static final double SECONDS_A_MINUTE = 60;

    private final GridWords words;
    private final ModeOrder order;
    private final CellMap.Side down;
    private final CellMap.Side across;

    private GridPage(Scenario scenario, CellMap.Side down, CellMap.Side across) {
        this.words = new GridWords(scenario);
        this.order = new ModeOrder(scenario.modes().stream().map(Mode::title).toList());
        this.down = down;
        this.across = across;
    }

    /**
     * Returns the page.
     *
     * @param scenario the scenario of the first row
     * @param table the rows
     * @param columns which two of its columns run down and across, from 0
     * @param tally how its rows divide
     * @param maps its answers laid out by those columns
     * @param version version of the program
     */
    public static ChartPage of(
            Scenario scenario,
            CaseTable table,
            List<Integer> columns,
            GridTally tally,
            List<GridMap> maps,
            String version) {
        GridMap any = maps.get(0);
        GridPage page = new GridPage(
                scenario,
                new CellMap.Side(shown(scenario, table.heads().get(columns.get(0))), any.down()),
                new CellMap.Side(shown(scenario, table.heads().get(columns.get(1))), any.across()));
        List<CaseName> names = CaseName.all(scenario, table.heads());
        return new ChartPage(
                "grid.html",
                scenario.title(),
                String.join(
                        "\n",
                        table.rows().size() + " rows of " + table.name() + ", " + scenario.trials()
                                + " trials each unless fewer are exact enough, seed " + scenario.seed() + ".",
                        GridWords.READING,
                        StudyWords.CAUTION),
                List.of(),
                IntStream.range(0, maps.size())
                        .mapToObj(i -> page.charts(
                                "case-" + (i + 1),
                                names.get(i).heading(),
                                tally.cases().get(i),
                                maps.get(i)))
                        .flatMap(List::stream)
                        .toList(),
                "Made by ionohaul " + version + " with seed " + scenario.seed()
                        + ". The same version, files, table, seed and trials give the same page.");
    }

    private static String shown(Scenario scenario, String head) {
        return CaseTable.isLabel(head)
                ? head.substring(head.indexOf('.') + 1)
                : KeyName.of(scenario, head).words();
    }

    private List<Chart> charts(String id, String name, GridTally.OfCase tally, GridMap map) {
        List<String> found = words.sentences(tally);
        List<Chart> charts = new ArrayList<>();
        charts.add(chart(
                id + "-best",
                name + ": which modes may be best",
                words.legend()
                        + ". Coloured: one mode alone; grey: several that can't be told apart, or none with which"
                        + " anything arrives.",
                found.get(0),
                map,
                this::bestCell,
                it -> CellMap.Shading.SHARES));
        if (!tally.deadlines().isEmpty()) {
            charts.add(chart(
                    id + "-chance",
                    name + ": through within "
                            + GridWords.time(tally.deadlines().get(0)),
                    "Of 100 trials, with the mode that keeps it most often; darker is more. Being the best of several flatters a"
                            + " little.",
                    found.get(1),
                    map,
                    GridPage::chanceCell,
                    it -> CellMap.Shading.SHARES));
        }
        charts.add(new Chart(
                id + "-time",
                name + ": the time to plan for",
                "Minutes, rounded up, that at least 9 of 10 trials keep with the mode for which they are fewest; darker is later. A stroke: so many"
                        + " trials can promise no such time.",
                "Minutes to plan for, by " + down.name() + " and " + across.name() + "; the table has them.",
                picture(map, GridPage::timeCell, CellMap.Shading::of),
                table(name, map)));
        return charts;
    }

    private Chart chart(
            String id,
            String title,
            String reading,
            String finding,
            GridMap map,
            BiFunction<GridMap.Place, String, CellMap.Place> cell,
            Function<List<CellMap.Place>, CellMap.Shading> shading) {
        return new Chart(id, title, reading, finding, picture(map, cell, shading), Table.NONE);
    }

    private CellMap picture(
            GridMap map,
            BiFunction<GridMap.Place, String, CellMap.Place> cell,
            Function<List<CellMap.Place>, CellMap.Shading> shading) {
        List<CellMap.Place> cells = new ArrayList<>();
        for (int row = 0; row < map.down().size(); row++) {
            for (int column = 0; column < map.across().size(); column++) {
                String where = map.down().get(row) + ", " + map.across().get(column);
                Optional<GridMap.Place> place = map.places().get(row).get(column);
                cells.add(place.map(it -> cell.apply(it, where + "\n"))
                        .orElse(new CellMap.Place(
                                "", where + "\nno such row", OptionalInt.empty(), OptionalDouble.empty())));
            }
        }
        return new CellMap(down, across, cells, shading.apply(cells));
    }

    private CellMap.Place bestCell(GridMap.Place place, String where) {
        return new CellMap.Place(
                letters(place),
                where + words.names(place.leaders()) + "; " + details(place),
                place.leaders().size() == 1
                        ? order.of(words.title(place.leaders().get(0)))
                        : OptionalInt.empty(),
                OptionalDouble.empty());
    }

    private static CellMap.Place chanceCell(GridMap.Place place, String where) {
        return new CellMap.Place(
                place.firstDeadline()
                        .map(it -> Cells.chance(it).text().replace(" %", ""))
                        .orElse(""),
                where + chance(place),
                OptionalInt.empty(),
                place.firstDeadline().stream().mapToDouble(Estimate::value).findFirst());
    }

    private static CellMap.Place timeCell(GridMap.Place place, String where) {
        boolean isReached = Double.isFinite(place.safeNinthSeconds());
        return new CellMap.Place(
                isReached ? Long.toString((long) Math.ceil(place.safeNinthSeconds() / SECONDS_A_MINUTE)) : "-",
                where + time(place),
                OptionalInt.empty(),
                isReached ? OptionalDouble.of(place.safeNinthSeconds()) : OptionalDouble.empty());
    }

    /** The first deadline's chance with its interval, and the time to plan for. */
    private static String details(GridMap.Place place) {
        String chance = chance(place);
        return chance.isEmpty() ? time(place) : chance + "; " + time(place);
    }

    private static String chance(GridMap.Place place) {
        return place.firstDeadline().map(it -> Cells.chance(it).line()).orElse("");
    }

    private static String time(GridMap.Place place) {
        return Double.isFinite(place.safeNinthSeconds())
                ? "plan for " + TimeText.plan(place.safeNinthSeconds())
                : "no time that 9 of 10 are sure to keep";
    }

    private Table table(String name, GridMap map) {
        return new Table(
                name
                        + ": modes that may be best; below, the chance of the first deadline with its interval, and the time to plan for",
                Stream.concat(Stream.of(down.name() + " \\ " + across.name()), map.across().stream())
                        .map(Cell::of)
                        .toList(),
                IntStream.range(0, map.down().size())
                        .mapToObj(row -> Stream.concat(
                                        Stream.of(Cell.of(map.down().get(row))),
                                        map.places().get(row).stream().map(this::cell))
                                .toList())
                        .toList());
    }

    private Cell cell(Optional<GridMap.Place> place) {
        return place.map(it -> new Cell(letters(it), details(it))).orElse(Cell.of("-"));
    }

    private String letters(GridMap.Place place) {
        return place.leaders().isEmpty() ? "none" : words.letters(place.leaders());
    }
}
