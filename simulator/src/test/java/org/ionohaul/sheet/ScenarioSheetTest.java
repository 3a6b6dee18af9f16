package org.ionohaul.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.ionohaul.GoldenFile;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

final class ScenarioSheetTest {
    private static final Path SCENARIOS = Path.of("..", "scenarios");

    static List<Path> scenarioFiles() throws IOException {
        try (Stream<Path> files = Files.list(SCENARIOS)) {
            return files.filter(file -> file.toString().endsWith(".toml"))
                    .sorted()
                    .toList();
        }
    }

    /** Levels from a link budget with uncertain losses and noise; levels as an SNR, noise that rises, two directions. */
    @ParameterizedTest
    @ValueSource(strings = {"noon-hop", "river-watch"})
    void aScenarioIsToldAsItWasUnderstood(String name) throws ScenarioProblems {
        List<String> lines = lines(SCENARIOS.resolve(name + ".toml"), Map.of());
        GoldenFile.of("sheet/" + name + ".txt").assertHolds(String.join("\n", lines) + "\n");
    }

    @ParameterizedTest
    @MethodSource("scenarioFiles")
    void theSheetFitsATerminal(Path file) throws ScenarioProblems {
        List<String> lines = lines(file, Map.of());
        assertTrue(lines.size() > 15);
        lines.forEach(line -> assertTrue(line.length() <= 80, line));
    }

    /** S9 is -73 dBm and an S-unit 6 dB (IARU Region 1 R.1): S7 over S3 is 24 dB. */
    @Test
    void statedReadingsComeBackAsReadingsLevelsAndTheirRatio() throws ScenarioProblems {
        Path file = SCENARIOS.resolve("polar-hut.toml");
        List<String> lines = lines(file, Map.of("near.signal", "s7", "near.noise", "S3"));
        assertTrue(lines.contains("  hears S7 (-85 dBm) of a steady carrier of Survey ship"), lines::toString);
        assertTrue(lines.contains("  noise S3 (-109 dBm) in 3 kHz"), lines::toString);
        assertTrue(lines.contains("  SNR 24 dB in 3 kHz"), lines::toString);
    }

    @Test
    void aRadiosFoldBackAndBusyDetectionComeBackOnlyWhereTheyAreStated() throws ScenarioProblems {
        Path file = SCENARIOS.resolve("polar-hut.toml");
        String told = String.join(
                "\n", lines(file, Map.of("near.fold-back.after", "20 s", "far.station.busy-detection", "1.5 s")));
        assertTrue(
                told.contains("  folds its power back by 3 dB once keyed for 20 s; cool again after 30 s of\n"), told);
        assertTrue(told.contains("  notices others after 1.5 s of them"), told);
        String untold = String.join("\n", lines(file, Map.of()));
        assertTrue(!untold.contains("folds") && !untold.contains("notices"), untold);
    }

    /** S4 is -103 dBm; 1100 km up and down less 100 km over ground take light 3.3 ms. */
    @Test
    void whatComesAndGoesAndWhatGoesAlongTheGroundComesBackInPlainUnits() throws ScenarioProblems {
        Path file = SCENARIOS.resolve("polar-hut.toml");
        Map<String, String> changes = Map.of(
                "sky.drop-outs.between", "98 s",
                "sky.sporadic-e.gain", "12 dB",
                "sky.ground-wave.over-ground", "100 km",
                "near.congestion", "quiet-band");
        String told = String.join("\n", lines(file, changes)).replace("\n  ", " ");
        assertTrue(
                told.contains(
                        "drop-outs 98 s apart on average, for 2 s on average, 2 % of the time: the sky wave is 30 dB down"),
                told);
        assertTrue(told.contains("14.3 % of the time: the sky wave is 12 dB up"), told);
        assertTrue(told.contains("ground wave 3.3 ms before the sky wave, -10 dB relative to it, steady"), told);
        assertTrue(told.contains("ground wave at Ptarmigan Hut: S2 (-113 dBm), SNR -1 dB"), told);
        assertTrue(told.contains("ground wave at Survey ship: S1 (-119 dBm), SNR -4 dB"), told);
        assertTrue(told.contains("others 0.5 visits an hour of 5 min, S3 (-112 dBm), 0 dB over the noise"), told);
        String plain = String.join("\n", lines(file, Map.of()));
        assertTrue(!plain.contains("drop-outs") && !plain.contains("sporadic") && !plain.contains("ground"), plain);
    }

    /** 20 W and 100 W differ by 7 dB (43.01 and 50 dBm). */
    @Test
    void whetherSignalsAreDrawnFromOnePathLossComesBack() throws ScenarioProblems {
        Path file = SCENARIOS.resolve("polar-hut.toml");
        Map<String, String> apart = Map.of("near.signal", "S4 ± 6 dB", "far.signal", "S3 ± 6 dB");
        String told = String.join("\n", lines(file, apart));
        assertTrue(told.contains("signals at the two ends are drawn apart from each other"), told);
        String together = String.join("\n", lines(file, Map.of("sky.day-to-day", "mid-latitude")));
        assertTrue(together.contains("signals at both ends are drawn from one path loss"), together);
    }

    @Test
    void aDeadlineByTheClockComesBackWithItsTimeAfterSending() throws ScenarioProblems {
        Path file = SCENARIOS.resolve("river-watch.toml");
        List<String> lines = lines(file, Map.of("transfer.1.deadlines", "[\"by 18:30\"]"));
        assertEquals(
                1,
                lines.stream()
                        .filter("  deadline 18:30, 22 min after pressing send"::equals)
                        .count());
    }

    private static List<String> lines(Path file, Map<String, String> changes) throws ScenarioProblems {
        return new ScenarioSheet(ScenarioReader.understand(SourceFiles.DISK, file, changes)).lines();
    }
}
