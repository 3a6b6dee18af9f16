package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What hardly anybody means is warned of, and used; what people do mean is not. */
final class WarningsTest {
    private final Path folder;

    WarningsTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "distance | 30000 km | \"30000 km\" is unusual: usually from 0 km to 22000 km",
                "near.power | 20 kW | \"20 kW\" is unusual: usually from 10 mW to 2 kW",
                "near.snr | 80 dB | \"80 dB\" is unusual: usually from -30 dB to 60 dB",
                "near.snr | 50..90 dB | \"50..90 dB\" is unusual: usually from -30 dB to 60 dB",
                "near.patience | 45 s | \"45 s\" is unusual: usually from 1 min to 24 h",
                "near.station.relay | 15 s | \"15 s\" is unusual: usually from 0 s to 1 s",
                "transfer.1.files.1.compression | 120 % | \"120 %\" is unusual: usually from 1 % to 100 %",
                "transfer.1.deadlines | [\"1 s\"] | [\"1 s\"] is unusual: hardly any link is open within 5 s",
                "transfer.1.files.1.size | 19 MB | \"note\" can't be through within the horizon, not even at the highest data"
                        + " rate of any mode",
                "sky.frequency | 50 MHz | \"50 MHz\" is unusual: usually from 1.6 MHz to 30 MHz",
                "modes.brisk-comb.emission.bandwidth | 2.2 Hz | \"2.2 Hz\" is unusual: usually from 10 Hz to 48 kHz"
            })
    void whatHardlyAnybodyMeansIsWarnedOf(String key, String value, String message) throws ScenarioProblems {
        List<Warning> warnings = warnings(WrittenScenario.in(folder), Map.of(key, value));
        assertEquals(
                List.of(message),
                warnings.stream().map(it -> it.told().message()).toList());
    }

    @Test
    void muchNoiseIsWarnedOf() throws ScenarioProblems {
        WrittenScenario noisy = WrittenScenario.in(folder)
                .replacing("[near]", "snr = \"14 dB\"", "signal = \"S9+40\"\nnoise = \"S9+20\"");
        assertEquals(
                List.of("\"S9+20\" is unusual: usually from -140 dBm to S9+10"),
                warnings(noisy, Map.of()).stream()
                        .map(it -> it.told().message())
                        .toList());
    }

    @Test
    void aPointFarFromWhatIsWatchedIsWarnedOf() throws ScenarioProblems {
        WrittenScenario scenario = WrittenScenario.in(folder)
                .with("[sky]", "condition = \"moderate\"\ntrend = [{ at = \"08:10\", rise = \"0 dB\" }]");
        assertEquals(
                List.of("\"08:10\" lies more than 3 hours before pressing send"),
                warnings(scenario, Map.of()).stream()
                        .map(it -> it.told().message())
                        .toList());
    }

    @Test
    void timesOfDayWithoutAClockAreWarnedOf() throws ScenarioProblems {
        WrittenScenario scenario = WrittenScenario.in(folder).replacing("", "clock = \"18:00\"\n", "");
        Map<String, String> byTheClock = Map.of("transfer.1.deadlines", "[\"12:30\"]");
        assertEquals(
                List.of("is left out, so times of day are counted from sending at 12:00"),
                warnings(scenario, byTheClock).stream()
                        .map(it -> it.told().message())
                        .toList());
        assertEquals(List.of(), warnings(scenario, Map.of()));
    }

    @Test
    void aWarningTellsItsPlaceAndWhatToDo() throws ScenarioProblems {
        WrittenScenario scenario = WrittenScenario.in(folder).replacing("", "300 km", "30000 km");
        String text = warnings(scenario, Map.of()).get(0).text();
        assertEquals(
                folder.resolve("test.toml") + ":4:1: distance: \"30000 km\" is unusual: usually from 0 km to 22000 km\n"
                        + "    change it unless you mean it",
                text);
    }

    @ParameterizedTest
    @MethodSource("org.ionohaul.scenario.ShippedFilesTest#scenarioFiles")
    void noShippedScenarioIsWarnedOf(Path file) throws ScenarioProblems {
        assertEquals(
                List.of(),
                ScenarioReader.understand(SourceFiles.DISK, file, Map.of()).warnings());
    }

    /** A mode is warned of where a scenario names it. */
    @ParameterizedTest
    @MethodSource("org.ionohaul.scenario.ShippedFilesTest#modeFiles")
    void noShippedModeIsWarnedOf(Path mode) throws ScenarioProblems {
        Map<String, String> changes = Map.of("modes", "[\"" + TomlFolder.nameOf(mode) + "\"]");
        assertEquals(List.of(), warnings(WrittenScenario.in(folder), changes));
    }

    /** Who mends the problem should not have to come back for the oddity. */
    @Test
    void problemsDoNotHideWarnings() {
        WrittenScenario scenario = WrittenScenario.in(folder)
                .replacing("", "300 km", "30000 km")
                .replacing("[near]", "snr = \"14 dB\"", "snr = \"fine\"");
        ScenarioProblems refused = assertThrows(ScenarioProblems.class, () -> warnings(scenario, Map.of()));
        assertEquals(1, refused.problems().size());
        assertEquals(
                List.of("\"30000 km\" is unusual: usually from 0 km to 22000 km"),
                refused.warnings().stream().map(it -> it.told().message()).toList());
    }

    /** A horizon that can't be read is stood in for; what does not fit into the stand-in is no oddity of the file. */
    @Test
    void nothingIsWarnedOfThatFollowsFromAStandIn() {
        WrittenScenario scenario = WrittenScenario.in(folder);
        Map<String, String> changes = Map.of("horizon", "soon", "transfer.1.files.1.size", "19 MB");
        ScenarioProblems refused = assertThrows(ScenarioProblems.class, () -> warnings(scenario, changes));
        assertEquals(List.of(), refused.warnings());
    }

    private static List<Warning> warnings(WrittenScenario scenario, Map<String, String> changes)
            throws ScenarioProblems {
        return ScenarioReader.understand(SourceFiles.DISK, scenario.written(), changes)
                .warnings();
    }
}
