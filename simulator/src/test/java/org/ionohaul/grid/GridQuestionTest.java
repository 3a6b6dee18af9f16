package org.ionohaul.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.scenario.Problem;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.study.StudyRunner;
import org.ionohaul.study.TrialPool;
import org.ionohaul.trial.TrialSkies;
import org.ionohaul.trial.TrialSky;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What a row comes to is what its own study comes to. */
final class GridQuestionTest {
    private static final Path SCENARIO = Path.of("../scenarios/river-watch.toml");
    private static final Map<String, String> FOR_ALL = Map.of("trials", "6", "modes", "[\"brisk-comb\"]");

    private static GridQuestion question() {
        return new GridQuestion(SourceFiles.DISK, SCENARIO, FOR_ALL, Optional.empty(), 100);
    }

    @Test
    @DisplayName(
            "a row's lines are those of a study with the same changes on the command line, on any number of threads")
    void aRowIsAStudy() throws ScenarioProblems {
        CaseRow row = CaseTable.of(7, List.of("label.hour", "far.snr"), List.of("20", "14 dB"));
        Scenario scenario =
                ScenarioReader.read(SCENARIO, Map.of("trials", "6", "modes", "[\"brisk-comb\"]", "far.snr", "14 dB"));
        StudySummary study = StudySummary.of(StudyRunner.of(scenario).run());

        List<String> lines = question().answer(row, () -> false);

        assertEquals(GridColumns.lines(row, scenario, study), lines);
        assertEquals(4, lines.size());
        assertTrue(lines.get(0).startsWith("7,20,14 dB,photo,upload,38000,brisk-comb,41,6,true,true,"), lines.get(0));
        assertEquals(
                GridColumns.heads(List.of("label.hour", "far.snr"), scenario).split(",").length,
                lines.get(0).split(",", -1).length);
    }

    @Test
    @DisplayName("rows that differ in labels alone have the same answer, wherever they stand")
    void rowsThatAskTheSameAreToldTheSame() {
        List<String> heads = List.of("label.hour", "far.snr");
        List<List<String>> answers = Stream.of(
                        CaseTable.of(3, heads, List.of("08", "14 dB")), CaseTable.of(99, heads, List.of("20", "14 dB")))
                .map(it -> question().answer(it, () -> false))
                .toList();
        assertEquals(
                answers.get(0).stream().map(it -> it.substring("3,08".length())).toList(),
                answers.get(1).stream()
                        .map(it -> it.substring("99,20".length()))
                        .toList());
    }

    @Test
    @DisplayName("rows meet common skies: what a row leaves as it is has the same chance in every trial")
    void rowsMeetCommonSkies() throws ScenarioProblems {
        List<String> heads = List.of("near.patience", "modes.brisk-comb.arq.window", "near.snr", "far.snr");
        TrialSkies plain = skies(CaseTable.of(2, heads, List.of("", "", "", "10 dB")));
        TrialSkies otherwiseUsed = skies(CaseTable.of(3, heads, List.of("20 min", "2", "", "10 dB")));
        TrialSkies stronger = skies(CaseTable.of(4, heads, List.of("", "", "", "13 dB")));
        TrialSkies lessSure = skies(CaseTable.of(5, heads, List.of("", "", "17 dB ± 3 dB", "10 dB")));
        for (int trial = 0; trial < 5; trial++) {
            TrialSky sky = plain.watched(trial, 600);
            assertEquals(sky, otherwiseUsed.watched(trial, 600));
            assertEquals(sky.near(), stronger.watched(trial, 600).near());
            assertEquals(
                    sky.far().middleSinrDb() + 3,
                    stronger.watched(trial, 600).far().middleSinrDb(),
                    1e-9);
            assertEquals(sky.far(), lessSure.watched(trial, 600).far());
        }
    }

    private static TrialSkies skies(CaseRow row) throws ScenarioProblems {
        return new TrialSkies(question().scenarioOf(row));
    }

    @Test
    @DisplayName("a row that is broken off comes to nothing")
    void aBrokenRowIsNoAnswer() {
        CaseRow row = CaseTable.of(2, List.of("far.snr"), List.of("14 dB"));
        assertEquals(List.of(), question().answer(row, () -> true));
    }

    @Test
    @DisplayName("every wrong cell is told with its row and key before anything is simulated")
    void wrongCellsAreTold() {
        List<String> heads = List.of("label.hour", "far.snr", "neer.snr");
        CaseTable table = new CaseTable(
                "hours.csv",
                heads,
                List.of(
                        CaseTable.of(2, heads, List.of("08", "loud", ""), List.of(1, 4, 9)),
                        CaseTable.of(3, heads, List.of("09", "9 dB", "12 dB")),
                        CaseTable.of(4, heads, List.of("10", "9 dB", ""))));

        ScenarioProblems problems =
                assertThrows(ScenarioProblems.class, () -> question().check(table));

        List<String> told = problems.told();
        assertEquals(2, told.size(), told::toString);
        assertTrue(told.get(0).startsWith("hours.csv:2:4: far.snr: "), told.get(0));
        assertTrue(told.get(1).startsWith("hours.csv:3:3: neer.snr: "), told.get(1));
    }

    @Test
    @DisplayName("what is wrong in a long table is the same whatever the number of threads, and nothing if interrupted")
    void aLongTableIsCheckedByManyThreads() {
        List<String> heads = List.of("far.snr", "near.snr");
        List<CaseRow> rows = IntStream.range(0, 90)
                .mapToObj(i -> CaseTable.of(
                        i + 2, heads, List.of(i % 7 == 3 ? i + " km" : i % 30 + " dB", i % 11 == 5 ? "low" : "5 dB")))
                .toList();
        CaseTable table = new CaseTable("long.csv", heads, rows);
        List<Problem> alone = question().problems(table, TrialPool.of(1)).orElseThrow();

        assertEquals(alone, question().problems(table, TrialPool.of(4)).orElseThrow());
        assertEquals(
                IntStream.range(0, 90)
                        .flatMap(i -> IntStream.range(0, (i % 7 == 3 ? 1 : 0) + (i % 11 == 5 ? 1 : 0))
                                .map(it -> i + 2))
                        .boxed()
                        .toList(),
                alone.stream().map(Problem::line).toList());
        AtomicInteger asked = new AtomicInteger();
        TrialPool cancelled = new TrialPool(1, (done, of) -> {}, () -> asked.incrementAndGet() > 40);
        assertEquals(Optional.empty(), question().problems(table, cancelled));
    }

    @Test
    @DisplayName("a mode file that is wrong is wrong for every row, though it is read once")
    void aWrongModeFileIsToldThoughReadOnce() throws IOException {
        Map<String, String> texts = new HashMap<>(Map.of("watch.toml", Files.readString(SCENARIO)));
        for (String mode : List.of("brisk-comb", "patient-climber", "steady-wagon", "slow-whistle")) {
            Path file = SCENARIO.resolveSibling("modes").resolve(mode + ".toml");
            texts.put("modes/" + mode + ".toml", Files.readString(file));
        }
        texts.merge("modes/steady-wagon.toml", "\nnonsense = 1\n", (text, more) -> more + text);
        GridQuestion question =
                new GridQuestion(SourceFiles.of(texts), Path.of("watch.toml"), Map.of(), Optional.empty(), 2);
        for (String level : List.of("9 dB", "14 dB")) {
            CaseRow row = CaseTable.of(2, List.of("far.snr"), List.of(level));
            ScenarioProblems problems = assertThrows(ScenarioProblems.class, () -> question.scenarioOf(row));
            assertTrue(problems.told().get(0).contains("steady-wagon.toml:2:1: nonsense"), problems.told()::toString);
        }
    }

    @Test
    @DisplayName("a row with other modes than the first belongs into another table")
    void rowsMustBeComparable() {
        List<String> heads = List.of("modes");
        CaseTable table = new CaseTable(
                "modes.csv",
                heads,
                List.of(
                        CaseTable.of(2, heads, List.of("[\"brisk-comb\"]")),
                        CaseTable.of(3, heads, List.of("[\"steady-wagon\"]"))));

        ScenarioProblems problems =
                assertThrows(ScenarioProblems.class, () -> question().check(table));

        assertTrue(problems.told().get(0).startsWith("modes.csv:3:1: has other modes"), problems.told()::toString);
    }

    @Test
    @DisplayName("all rows come from the same texts: a file that changes meanwhile is not read again")
    void textsAreReadOnce() throws ScenarioProblems {
        List<Path> read = new ArrayList<>();
        SourceFiles counted = new SourceFiles() {
            @Override
            public String text(Path file) throws IOException {
                read.add(file);
                return DISK.text(file);
            }

            @Override
            public boolean exists(Path file) {
                return DISK.exists(file);
            }

            @Override
            public List<Path> in(Path folder) throws IOException {
                return DISK.in(folder);
            }
        };
        List<String> heads = List.of("far.snr");
        GridQuestion question = new GridQuestion(counted, SCENARIO, FOR_ALL, Optional.empty(), 100);
        question.check(new CaseTable(
                "levels.csv",
                heads,
                List.of(CaseTable.of(2, heads, List.of("9 dB")), CaseTable.of(3, heads, List.of("14 dB")))));
        assertEquals(read.stream().distinct().toList(), read);
        assertTrue(read.contains(SCENARIO), read::toString);
    }
}
