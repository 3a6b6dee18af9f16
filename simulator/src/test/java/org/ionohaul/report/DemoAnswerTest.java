package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.rendering.StyledLine;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.Cause;
import org.ionohaul.session.TimeBudget;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.ModeTrials;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.TrialRow;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the demo prints first at its own thousand trials. Simulating them takes a minute; so times are made up for the demo's own
 * files, ways, deadlines and modes that come to the verdicts simulation comes to, and are told by the longest sentence on every case.
 */
final class DemoAnswerTest {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final int SCREEN = 40;
    /** A command, an empty line, and two on what is written where. */
    private static final int LINES_AROUND = 4;

    /** Median seconds of each mode by name, and how far a trial's luck and a mode's own bend the logarithm of that. */
    private record Made(List<Double> medianSeconds, double common, double own) {}

    private static final Map<String, Made> MADE = Map.of(
            "photo UPLOAD", new Made(List.of(1726.0, 606.0, 9e3, 1243.0), 0.33, 0.03),
            "photo DOWNLOAD", new Made(List.of(451.0, 200.0, 9e3, 1000.0), 0.2, 0.02),
            "roster UPLOAD", new Made(List.of(42.0, 50.0, 400.0, 42.6), 0.25, 0.05),
            "roster DOWNLOAD", new Made(List.of(21.0, 39.0, 400.0, 21.6), 0.45, 0.05));

    private static StudyResult result;

    @BeforeAll
    static void make() throws ScenarioProblems, IOException {
        Scenario scenario = ScenarioReader.read(SourceFiles.DISK, Path.of("../scenarios/river-watch.toml"), Map.of());
        List<CaseTrials> cases = new ArrayList<>();
        for (Transfer transfer : scenario.transfers()) {
            for (Direction direction : transfer.directions()) {
                cases.add(new CaseTrials(transfer, direction, modes(scenario, transfer, direction)));
            }
        }
        result = new StudyResult(scenario, cases, scenario.trials(), scenario.trials());
    }

    private static List<ModeTrials> modes(Scenario scenario, Transfer transfer, Direction direction) {
        Made made = Objects.requireNonNull(MADE.get(transfer.name() + " " + direction));
        int trials = scenario.trials();
        return IntStream.range(0, scenario.modes().size())
                .mapToObj(mode -> new ModeTrials(
                        scenario.modes().get(mode),
                        LongStream.range(0, trials)
                                .mapToObj(trial -> row(transfer, trial, seconds(made, mode, trial, trials)))
                                .toList()))
                .toList();
    }

    /** Luck goes through its quantiles, that of a mode's own in an order of its own. */
    private static double seconds(Made made, int mode, long trial, int trials) {
        double common = NORMAL.inverseCumulativeProbability((trial + 0.5) / trials);
        double own = NORMAL.inverseCumulativeProbability(((trial * (37 + 30 * mode) % trials) + 0.5) / trials);
        return made.medianSeconds.get(mode) * Math.exp(made.common * common + made.own * own);
    }

    /** All but some seconds pass in silence: no cause has a longer name. */
    private static TrialRow row(Transfer transfer, long trial, double seconds) {
        long delivered = Math.round(seconds * 1e9);
        TimeBudget budget = TimeBudget.of(Map.of(Cause.SILENCE, delivered, Cause.NEW_PAYLOAD, 4_000_000_000L));
        return TrialRow.of(trial, FabricatedStudy.session(transfer, delivered, seconds < 3600, budget));
    }

    private static List<String> lines(int width) {
        return new FirstScreen(result, StudySummary.of(result), width)
                .lines().stream().map(StyledLine::text).toList();
    }

    @Test
    void thousandTrialsAreToldAsTheDemosAre() {
        List<String> lines = lines(200);
        String text = String.join("\n", lines);
        assertTrue(lines.contains("1,000 simulated trials, each mode under the same sky, seed 41."), text);
        assertTrue(text.contains("Brisk comb, Steady wagon or Patient climber"), text);
        assertTrue(text.contains("Patient climber or Brisk comb"), text);
        assertTrue(text.contains("Brisk comb or Steady wagon  "), text);
        assertTrue(text.contains(">99 %, at least 98 %"), text);
        assertEquals(
                4,
                lines.stream()
                        .filter(
                                it -> it.matches(
                                        ".* (ahead of|first, before) .*: where both get through, it needs .* less, mostly on waiting in silence\\."))
                        .count(),
                text);
    }

    @ParameterizedTest
    @ValueSource(ints = {80, 100, 120, 200})
    void theyFitOnFortyLines(int width) {
        List<String> lines = lines(width);
        assertTrue(lines.size() + LINES_AROUND <= SCREEN, lines.size() + " lines\n" + String.join("\n", lines));
    }

    @ParameterizedTest
    @ValueSource(ints = {60, 80, 120, 200})
    void noLineIsWider(int width) {
        lines(width).forEach(it -> assertTrue(it.length() <= width, it));
    }

    /** Wherever columns come below others, too, every row begins with its full name. */
    @ParameterizedTest
    @ValueSource(ints = {40, 60, 80, 120})
    void everyRowOfEveryBlockHasItsName(int width) {
        List<String> lines = lines(width);
        List<String> names = new ArrayList<>();
        for (int rule = 0; rule < lines.size(); rule++) {
            if (lines.get(rule).matches(" +-+")) {
                String heads = lines.get(rule - 1);
                int column = heads.indexOf(heads.strip());
                names.add(lines.subList(rule + 1, lines.size()).stream()
                        .takeWhile(it -> !it.isEmpty())
                        .map(it ->
                                it.substring(0, Math.min(column, it.length())).strip())
                        .filter(it -> !it.isEmpty())
                        .collect(Collectors.joining(" ")));
            }
        }
        assertTrue(names.size() >= 2, names::toString);
        names.forEach(it -> assertEquals("to Flood desk to Osier Weir", it));
    }
}
