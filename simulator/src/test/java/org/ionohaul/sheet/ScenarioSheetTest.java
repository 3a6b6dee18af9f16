package org.ionohaul.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
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
    void answersOfOneWordAreTold() throws ScenarioProblems {
        String told = String.join(
                " ", lines(SCENARIOS.resolve("river-watch.toml"), Map.of("modes", "[\"m625-arq\", \"brisk-comb\"]")));
        assertTrue(told.contains("(1 data rate, 270 Hz, answers of one word that may be taken for the other);"), told);
        assertTrue(told.contains("615 Hz)."), told);
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

    /** 30 Hz above and 12 below are 42 apart; 0.5 Hz a minute for three hours make 90 more. */
    @Test
    void howFarTheStationsAreApartInFrequencyComesBackWithWhatModesTake() throws ScenarioProblems {
        Path file = SCENARIOS.resolve("polar-hut.toml");
        Map<String, String> changes =
                Map.of("near.tuning.offset", "30 Hz", "near.tuning.drift", "0.5 Hz/min", "far.tuning.offset", "-12 Hz");
        String told = String.join("\n", lines(file, changes)).replace("\n  ", " ");
        assertTrue(
                told.contains(
                        "tuning apart by 42 Hz when send is pressed, by 132 Hz at the horizon; nothing is lost up to 75 Hz"
                                + " with Brisk comb, "),
                told);
        assertTrue(!String.join("\n", lines(file, Map.of())).contains("tuning"));
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

    /** S6, S7 and S8 are -91, -85 and -79 dBm; nobody read between four and ten minutes. */
    @Test
    void whatWasReadOfTheSignalComesBackAndMovesTheOtherEndToo() throws ScenarioProblems {
        String told = readings("time;signal;noise\n0 min;S7;S3\n2 min;S8;S3\n4 min;S6;S3\n10 min;S6;S3\n");
        assertTrue(
                told.contains(
                        "readings evening.csv: 4 levels of the signal and noise, averages over 1 min, from 18:00 to 18:10,"
                                + " 2 min apart, at most 6 min (from 18:04)"),
                told);
        assertTrue(
                told.contains(
                        "readings lie between S6 (-91 dBm) and S8 (-79 dBm); above is the level when send is pressed"),
                told);
        assertTrue(told.contains("hears S7 (-85 dBm) of a steady carrier of Desk"), told);
        assertTrue(
                told.contains("level at Weir goes as it was read there; what changes faster is simulated"
                        + " level at Desk goes as it was read at Weir; what changes faster is simulated"),
                told);
    }

    @Test
    void whatWasReadAsAnSnrSaysNothingOfTheOtherEnd() throws ScenarioProblems {
        String told = readings("time;snr dB\n0 min;8,5\n2 min;8,1\n4 min;9,9\n");
        assertTrue(
                told.contains("readings evening.csv: 3 levels of SNR, averages over 1 min, from 18:00 to 18:04, 2 min"
                        + " apart, at most 2 min (from 18:00)"),
                told);
        assertTrue(told.contains("readings lie between 8.1 dB and 9.9 dB; above is"), told);
        assertTrue(told.contains("SNR 8.5 dB in 3 kHz; levels in dBm and S are not stated"), told);
        assertTrue(told.contains("level at Weir goes as it was read there") && !told.contains("level at Desk"), told);
    }

    /** The signal is stated, the noise was read: its rise is the readings', without a level that goes as it was read. */
    @Test
    void whatWasReadOfTheNoiseAloneIsToldAsNoise() throws ScenarioProblems {
        String told = readings("time;noise\n0 min;S3\n20 min;S4\n", "signal = \"S7\"");
        assertTrue(
                told.contains("readings evening.csv: 2 levels of the noise, averages over 1 min, from 18:00 to 18:20,"),
                told);
        assertTrue(told.contains("noise 6 dB more at the horizon than at 18:00"), told);
        assertTrue(!told.contains("lie between") && !told.contains("as it was read"), told);
    }

    private static String readings(String table, String... stated) throws ScenarioProblems {
        String text = """
                title = "Read"
                clock = "18:00"
                horizon = "20 min"
                distance = "100 km"
                modes = ["brisk-comb"]
                sky = { condition = "flat" }
                [[transfer]]
                name = "text"
                files = [{ name = "text", size = "1 kB" }]
                directions = ["upload"]
                [near]
                name = "Weir"
                STATED
                readings = { file = "evening.csv", average = "1 min" }
                station = { hang = "10 ms", relay = "15 ms", recovery = "20 ms" }
                [far]
                name = "Desk"
                signal = "S6"
                noise = "S2"
                station = { hang = "10 ms", relay = "15 ms", recovery = "20 ms" }
                """.replace("STATED", String.join("\n", stated));
        SourceFiles files = SourceFiles.of(Map.of(
                "read.toml",
                text,
                "evening.csv",
                table,
                "modes/brisk-comb.toml",
                text(SCENARIOS.resolve("modes/brisk-comb.toml"))));
        List<String> lines =
                new ScenarioSheet(ScenarioReader.understand(files, Path.of("read.toml"), Map.of())).lines();
        return String.join("\n", lines).replaceAll("\n +", " ");
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> lines(Path file, Map<String, String> changes) throws ScenarioProblems {
        return new ScenarioSheet(ScenarioReader.understand(SourceFiles.DISK, file, changes)).lines();
    }
}
