package org.ionohaul.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.session.SessionResult;
import org.ionohaul.study.InventedStudy;
import org.ionohaul.study.Journal;
import org.ionohaul.study.LineStore;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.TrialPool;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said of the rows of a grid, over many rows whose truth is known. */
final class GridTallyTest {
    private static final List<String> MODES = List.of("hare", "snail", "tortoise");
    private static final List<String> HEADS = List.of("label.month", "label.hour", "far.snr");
    private static final int TRIALS = 80;

    @TempDir
    private Path folder = Path.of("");

    /** A grid whose rows are studies of sessions that keep the deadline of 100 s each with the same chance. */
    private final class Grid {
        private final CaseTable table;
        private final LineStore lines;
        private final String heads;

        Grid(int rows, double chance) throws IOException {
            UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(11);
            List<CaseRow> cases = IntStream.range(0, rows)
                    .mapToObj(i -> CaseTable.of(i + 2, HEADS, List.of("m" + i / 4 % 3, "h" + i % 4, "9 dB")))
                    .toList();
            table = new CaseTable("invented", HEADS, cases);
            List<List<String>> answers = new ArrayList<>();
            StudyResult study = study(random, chance);
            heads = GridColumns.heads(HEADS, study.scenario());
            for (CaseRow row : cases) {
                answers.add(GridColumns.lines(row, study.scenario(), StudySummary.of(study)));
                study = study(random, chance);
            }
            lines = LineStore.in(Journal.begin(folder.resolve("journal " + chance), "test"), "rows");
            TrialPool.of(2).run(rows, answers::get, lines);
        }

        private StudyResult study(UniformRandomProvider random, double chance) {
            List<List<SessionResult>> sessions = MODES.stream()
                    .map(mode -> Stream.generate(() -> InventedStudy.delivered(
                                    random.nextDouble() < chance ? 20 + 80 * random.nextDouble() : 200))
                            .limit(TRIALS)
                            .toList())
                    .toList();
            return InventedStudy.study(List.of(100.0), MODES, sessions);
        }

        GridTally.OfCase tally() throws IOException {
            return GridTally.of(table, heads, lines).cases().get(0);
        }
    }

    @Test
    @DisplayName("where 9 of 10 are just missed with every mode, at most 5 of 100 rows are said to be kept")
    void keptIsSeldomWrong() throws IOException {
        GridTally.OfDeadline deadline =
                new Grid(1500, 0.899).tally().deadlines().get(0);

        assertEquals(1500, deadline.kept() + deadline.missed() + deadline.open());
        // 0.05 of 1500 rows, three standard errors (8.4 each) above; and the test has something to count.
        assertTrue(deadline.kept() <= 100 && deadline.kept() > 0, deadline::toString);
    }

    @Test
    @DisplayName("where 9 of 10 are just kept, at most 5 of 100 rows are said to be missed with every mode")
    void missedIsSeldomWrong() throws IOException {
        GridTally.OfDeadline deadline = new Grid(1500, 0.9).tally().deadlines().get(0);

        assertTrue(deadline.missed() <= 100, deadline::toString);
    }

    @Test
    @DisplayName("clear rows are told as such")
    void clearRowsAreTold() throws IOException {
        assertEquals(40, new Grid(40, 0.999).tally().deadlines().get(0).kept());
        assertEquals(40, new Grid(40, 0.5).tally().deadlines().get(0).missed());
    }

    @Test
    @DisplayName("of identical modes one alone is called best on at most 5 of 100 rows")
    void alikeModesAreSeldomParted() throws IOException {
        Map<List<String>, Integer> rows = new Grid(600, 0.8).tally().rowsByLeaders();

        int parted = rows.entrySet().stream()
                .filter(it -> it.getKey().size() == 1)
                .mapToInt(Map.Entry::getValue)
                .sum();
        // 0.05 of 600 rows, three standard errors (5.3 each) above.
        assertTrue(parted <= 46, rows::toString);
        assertEquals(600, rows.values().stream().mapToInt(it -> it).sum());
    }

    @Test
    @DisplayName("a map has a place for each pair of values and, where several rows fall on one, tells the worst")
    void mapsTellTheWorstRow() throws IOException {
        Grid grid = new Grid(24, 0.8);

        GridMap map = GridMap.of(grid.table, grid.heads, grid.lines, 0, 1).get(0);

        assertEquals(List.of("m0", "m1", "m2"), map.down());
        assertEquals(List.of("h0", "h1", "h2", "h3"), map.across());
        List<Double> shares = new ArrayList<>();
        AnsweredCase.forEach(grid.heads, HEADS.size(), grid.lines, it -> {
            if (it.cells().subList(0, 2).equals(List.of("m1", "h2"))) {
                shares.add(it.modes().stream()
                        .mapToDouble(mode -> mode.deadlines().get(0).chance().value())
                        .max()
                        .orElseThrow());
            }
        });
        assertEquals(2, shares.size());
        Optional<GridMap.Place> place = map.places().get(1).get(2);
        assertEquals(Math.min(shares.get(0), shares.get(1)), place.orElseThrow().firstDeadlineShare());
    }
}
