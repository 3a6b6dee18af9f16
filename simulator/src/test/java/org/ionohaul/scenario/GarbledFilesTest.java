package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever a slip of the hand makes of a file, it is read or its problems are told; the reader itself never fails. */
final class GarbledFilesTest {
    private static final int ROUNDS = 150;

    @Test
    void aGarbledScenarioIsReadOrItsProblemsAreTold(@TempDir Path folder) throws IOException {
        Random chance = new Random(1);
        List<String> lines = Files.readAllLines(ShippedFilesTest.SCENARIOS.resolve("unknown-evening.toml"));
        Files.createDirectories(folder.resolve("modes"));
        int refused = 0;
        for (int round = 0; round < ROUNDS; round++) {
            Path file = Files.write(folder.resolve("garbled.toml"), garbled(lines, chance));
            refused += isRefused(() -> ScenarioReader.read(file)) ? 1 : 0;
        }
        assertTrue(refused > ROUNDS / 2, "refused " + refused);
    }

    @Test
    void aGarbledNetIsReadOrItsProblemsAreTold(@TempDir Path folder) throws IOException {
        Random chance = new Random(1);
        List<String> lines = Files.readAllLines(ShippedFilesTest.SCENARIOS.resolve("nets/bridge-valley.toml"));
        Path mode = Path.of("modes", "patient-climber.toml");
        Files.createDirectories(folder.resolve("modes"));
        Files.copy(ShippedFilesTest.SCENARIOS.resolve(mode), folder.resolve(mode));
        int refused = 0;
        for (int round = 0; round < ROUNDS; round++) {
            Path file = Files.write(folder.resolve("garbled.toml"), garbled(lines, chance));
            refused += isRefused(() -> NetReader.read(SourceFiles.DISK, file, Map.of())) ? 1 : 0;
        }
        assertTrue(refused > ROUNDS / 4 && refused < ROUNDS, "refused " + refused);
    }

    @Test
    void aGarbledModeIsReadOrItsProblemsAreTold(@TempDir Path folder) throws IOException {
        Random chance = new Random(1);
        List<String> lines = Files.readAllLines(ShippedFilesTest.SCENARIOS.resolve("modes/slow-whistle.toml"));
        int refused = 0;
        for (int round = 0; round < ROUNDS; round++) {
            Path file = Files.write(folder.resolve("garbled.toml"), garbled(lines, chance));
            refused += isRefused(() -> ScenarioReader.readMode(file)) ? 1 : 0;
        }
        assertTrue(refused > ROUNDS / 4, "refused " + refused);
    }

    /** Reads something that may be refused. */
    @FunctionalInterface
    private interface Reading {
        Object read() throws ScenarioProblems;
    }

    private static boolean isRefused(Reading reading) {
        try {
            reading.read();
            return false;
        } catch (ScenarioProblems e) {
            assertFalse(e.problems().isEmpty());
            return true;
        }
    }

    /** Returns the lines with some dropped, doubled, cut short or with a character replaced. */
    private static List<String> garbled(List<String> lines, Random chance) {
        List<String> garbled = new ArrayList<>(lines);
        for (int slip = 0; slip < 3; slip++) {
            int at = chance.nextInt(garbled.size());
            String line = garbled.get(at);
            int column = chance.nextInt(line.length() + 1);
            switch (chance.nextInt(4)) {
                case 0 -> garbled.remove(at);
                case 1 -> garbled.add(at, line);
                case 2 -> garbled.set(at, line.substring(0, column));
                default ->
                    garbled.set(
                            at, line.substring(0, column) + (char) (' ' + chance.nextInt(95)) + line.substring(column));
            }
        }
        return garbled;
    }
}
