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
