package org.ionohaul.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.ionohaul.picture.CellMap;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.rendering.PageFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.statistics.Estimate;
import org.junit.jupiter.api.Test;

final class GridPageTest {
    private static final List<String> HEADS = List.of("label.month", "label.hour", "far.snr");

    private final Scenario scenario;

    GridPageTest() throws ScenarioProblems {
        scenario = ScenarioReader.read(
                Path.of("../scenarios/river-watch.toml"), Map.of("transfer.1.directions", "[\"upload\"]"));
    }

    private static CaseTable table(List<List<String>> rows) {
        return new CaseTable(
                "hours.csv",
                HEADS,
                rows.stream().map(it -> CaseTable.of(2, HEADS, it)).toList());
    }

    @Test
    void twoColumnsThatTellAllRowsApartMakeAMap() {
        CaseTable hours = table(List.of(
                List.of("Jan", "08", "9 dB"),
                List.of("Jan", "20", "9 dB"),
                List.of("Jul", "08", "9 dB"),
                List.of("Jul", "20", "9 dB")));
        assertEquals(List.of(0, 1), hours.mapped());
        CaseTable oneMonth = table(
                List.of(List.of("Jan", "08", "9 dB"), List.of("Jan", "20", "9 dB"), List.of("Jan", "08", "3 dB")));
        assertEquals(List.of(1, 2), oneMonth.mapped());
        CaseTable twice = table(
                List.of(List.of("Jan", "08", "9 dB"), List.of("Jul", "08", "3 dB"), List.of("Jan", "08", "9 dB")));
        assertEquals(List.of(), twice.mapped());
    }

    /** One mode alone is coloured, several are grey; shares are shaded as such; what no trial promises has no minutes. */
    @Test
    void eachPlaceShowsWhatWasFound() throws IOException {
        GridMap.Place alone =
                new GridMap.Place(List.of("brisk-comb"), 601, Optional.of(new Estimate(0.75, 0.65, 0.83)));
        GridMap.Place both = new GridMap.Place(
                List.of("brisk-comb", "patient-climber"),
                Double.POSITIVE_INFINITY,
                Optional.of(new Estimate(0.25, 0.17, 0.35)));
        GridMap map = new GridMap(
                "photo",
                "upload",
                List.of("Jan"),
                List.of("08", "20", "22"),
                List.of(List.of(Optional.of(alone), Optional.of(both), Optional.empty())));
        GridTally tally = new GridTally(List.of(new GridTally.OfCase(
                "photo",
                "upload",
                Map.of(List.of("brisk-comb"), 1),
                List.of(new GridTally.OfDeadline(600, 600, 0, 1, 1)))));
        CaseTable table = table(List.of(List.of("Jan", "08", "9 dB"), List.of("Jan", "20", "3 dB")));

        ChartPage page = GridPage.of(scenario, table, List.of(0, 1), tally, List.of(map), "1");

        assertEquals(
                List.of("case-1-best", "case-1-chance", "case-1-time"),
                page.charts().stream().map(it -> it.id()).toList());
        assertTrue(page.charts().get(0).description().startsWith("Best of 1 row: Brisk comb on 1"));
        CellMap best = (CellMap) page.charts().get(0).picture();
        assertEquals("month", best.down().name());
        assertEquals(
                List.of("A", "AB", ""),
                best.cells().stream().map(CellMap.Place::label).toList());
        assertEquals(
                List.of(OptionalInt.of(0), OptionalInt.empty(), OptionalInt.empty()),
                best.cells().stream().map(CellMap.Place::mode).toList());
        assertTrue(best.cells().get(0).says().contains("75 %"), best.cells().get(0)::says);
        CellMap chance = (CellMap) page.charts().get(1).picture();
        assertEquals(CellMap.Shading.SHARES, chance.shading());
        assertEquals(
                List.of(OptionalDouble.of(0.75), OptionalDouble.of(0.25), OptionalDouble.empty()),
                chance.cells().stream().map(CellMap.Place::value).toList());
        CellMap time = (CellMap) page.charts().get(2).picture();
        assertEquals(
                List.of("11", "-", ""),
                time.cells().stream().map(CellMap.Place::label).toList());
        String cell = page.charts().get(2).table().rows().get(0).get(1).line();
        assertTrue(cell.startsWith("A (75 % (65"), cell);
    }

    /** A month by hour table of the demo: four cases, each with three maps of 288 places, drawn for phones and for desks. */
    @Test
    void aYearByTheHourIsNoLargePage() throws IOException, ScenarioProblems {
        List<String> months =
                IntStream.range(1, 13).mapToObj("%02d Jan"::formatted).toList();
        List<String> hours = IntStream.range(0, 24).mapToObj("%02d"::formatted).toList();
        Optional<GridMap.Place> wordy = Optional.of(new GridMap.Place(
                List.of("brisk-comb", "patient-climber", "steady-wagon"),
                Double.POSITIVE_INFINITY,
                Optional.of(new Estimate(0.25, 0.17, 0.35))));
        Scenario demo = ScenarioReader.read(Path.of("../scenarios/river-watch.toml"));
        List<GridMap> maps = new ArrayList<>();
        List<GridTally.OfCase> cases = new ArrayList<>();
        for (String transfer : List.of("photo", "roster")) {
            for (String direction : List.of("upload", "download")) {
                maps.add(new GridMap(
                        transfer,
                        direction,
                        months,
                        hours,
                        Collections.nCopies(months.size(), Collections.nCopies(hours.size(), wordy))));
                cases.add(new GridTally.OfCase(
                        transfer,
                        direction,
                        Map.of(List.of("brisk-comb"), 288),
                        List.of(new GridTally.OfDeadline(600, 600, 0, 288, 0))));
            }
        }
        StringWriter page = new StringWriter();
        PageFile.write(
                "charts.jte",
                GridPage.of(
                        demo,
                        table(List.of(List.of("Jan", "08", "9 dB"))),
                        List.of(0, 1),
                        new GridTally(cases),
                        maps,
                        "1"),
                page);
        assertTrue(page.toString().length() < 1_200_000, () -> page.toString().length() + " bytes");
        assertEquals(12 * 288, page.toString().split("<title>", -1).length - 2, "said once a place and map");
    }
}
