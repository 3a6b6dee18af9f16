package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A scenario's text with other values: what was not asked for stays, remarks and all. */
final class ScenarioTextTest {
    private static final String TEXT = """
            # a remark with near.snr = "1 dB"
            [near]
            snr = "12 dB ± 4 dB"     # a guess
            noise-schedule = [
                { at = "19:10", rise = "0 dB" },     # lights = "on"
                { at = "19:16", rise = "2 dB .. 7 dB" },
            ]

            [[sky.path]]
            delay = "1 ms .. 6 ms"
            [[sky.path]]
            power = [{ value = "-3 dB", weight = 1 }, { value = "0 dB", weight = 3 }]   # or so
            """;

    private static final ScenarioText STATED = new ScenarioText(TEXT, Map.of());

    private static String changed(String key, String value) {
        return STATED.with(key, value).orElseThrow().toString();
    }

    @Test
    void oneValueIsReplacedAndNothingElse() {
        assertEquals(TEXT.replace("\"12 dB ± 4 dB\"", "\"6 dB ± 1 dB\""), changed("near.snr", "\"6 dB ± 1 dB\""));
        assertEquals(TEXT.replace("2 dB .. 7 dB", "5 dB"), changed("near.noise-schedule.2.rise", "\"5 dB\""));
        assertEquals(TEXT.replace("1 ms .. 6 ms", "2 ms"), changed("sky.path.1.delay", "\"2 ms\""));
        assertEquals(
                TEXT.replace("[{ value = \"-3 dB\", weight = 1 }, { value = \"0 dB\", weight = 3 }]", "\"-1 dB\""),
                changed("sky.path.2.power", "\"-1 dB\""));
    }

    @Test
    void aKeyThatIsNotThereIsNotReplaced() {
        assertEquals(Optional.empty(), STATED.with("near.signal", "\"S7\""));
        assertEquals(Optional.empty(), STATED.with("sky.path.3.power", "\"0 dB\""));
        assertEquals(Optional.empty(), STATED.with("near.snr.value", "\"0 dB\""));
    }

    @Test
    void changesOfTheCommandLineGoIntoTheTextWhereTheyHaveAPlace() {
        ScenarioText text = new ScenarioText(TEXT, Map.of("near.snr", "9 dB ± 2 dB", "near.signal", "S7"));
        assertEquals(9, text.input("near.snr").orElseThrow().quantile(0.5), 1e-9);
        ScenarioText changed = text.withChanges();
        assertEquals(TEXT.replace("12 dB ± 4 dB", "9 dB ± 2 dB"), changed.toString());
        assertEquals(Map.of("near.signal", "S7"), changed.changesLeft());
    }

    @Test
    void inputsComeInTheNumbersThatTheyAreWrittenIn() {
        assertEquals(
                "12.0 dB",
                STATED.input("near.snr").map(it -> it.text(it.quantile(0.5))).orElseThrow());
        assertEquals(
                "5.1 to 6.2 dB",
                STATED.input("near.snr").map(it -> it.range(5.06, 6.24)).orElseThrow());
        assertEquals(3.5, STATED.input("sky.path.1.delay").orElseThrow().quantile(0.5), 1e-9);
        assertEquals(-3, STATED.input("sky.path.2.power").orElseThrow().quantile(0.2), 1e-9);
        // A quarter of the weight is below.
        assertEquals(0, STATED.input("sky.path.2.power").orElseThrow().quantile(0.26), 1e-9);
        assertEquals(Optional.empty(), STATED.input("near.noise-schedule.1.at"), "it is known");
        assertEquals(-85, WrittenInput.of("S7 ± 3 dB").orElseThrow().quantile(0.5), 1e-9);
        assertEquals(Optional.empty(), WrittenInput.of("0.5 s .. 700 ms"));
        assertEquals(Optional.empty(), WrittenInput.of("rural"));
    }

    @Test
    void aNarrowerDistributionIsWrittenAsItsKindIs() throws WrongValue {
        // A standard normal score of -1, give or take 0.1, of 12 dB ± 4 dB.
        double[] low = {0.14, 0.1587, 0.18};
        WrittenInput level = WrittenInput.of("12 dB ± 4 dB").orElseThrow();
        assertEquals("\"8.02 dB ± 0.27 dB\"", level.narrowed(low));
        assertEquals(
                "[{ value = \"0.312 Hz\", weight = 1 }, { value = \"0.327 Hz\", weight = 1 }, { value = \"0.344 Hz\", weight = 1 }]",
                WrittenInput.of("0.2 Hz .. 1 Hz").orElseThrow().narrowed(low));
        assertEquals(
                "[{ value = \"-3 dB\", weight = 750 }, { value = \"0 dB\", weight = 250 }]",
                STATED.input("sky.path.2.power").orElseThrow().narrowed(new double[] {0.1, 0.2, 0.24, 0.8}));
        assertEquals(8.02, Kind.snr().read("8.02 dB ± 0.27 dB").quantile(0.5), 1e-9, "what is written can be read");
    }

    @Test
    void timesOfDayAreToldByTheClock() throws WrongValue {
        WrittenInput lights = WrittenInput.of("19:10 ± 5 min").orElseThrow();
        assertEquals("19:10", lights.text(lights.quantile(0.5)));
        // 1.2754 deviations of five minutes, since the normal distribution is cut off at three.
        assertEquals("19:03:37 to 19:16:23", lights.range(lights.quantile(0.1), lights.quantile(0.9)));
        assertEquals("\"19:05:02 ± 0.33 min\"", lights.narrowed(new double[] {0.14, 0.1587, 0.18}));
        assertEquals(
                19 * 3600 + 5 * 60 + 2,
                Moment.kind().read("19:05:02 ± 0.33 min").seconds().quantile(0.5),
                1e-6,
                "what is written can be read");
        WrittenInput midnight = WrittenInput.of("23:58 ± 4 min").orElseThrow();
        assertEquals("00:02", midnight.text(midnight.quantile(0.5) + 4));
        assertEquals(
                "[{ value = \"19:13\", weight = 1 }, { value = \"19:17\", weight = 1 }]",
                WrittenInput.of("19:10 .. 19:20").orElseThrow().narrowed(new double[] {0.3, 0.7}));
        assertEquals(Optional.empty(), WrittenInput.of("19:20 .. 19:10"));
    }

    @Test
    void everyUncertainInputOfAShippedScenarioHasAPlace() throws IOException, ScenarioProblems {
        Path file = ShippedFilesTest.SCENARIOS.resolve("unknown-evening.toml");
        ScenarioText text = new ScenarioText(Files.readString(file), Map.of());
        for (String key : ScenarioReader.read(file).sky().uncertainKeys()) {
            assertTrue(text.input(key).isPresent(), key);
            assertTrue(text.with(key, "\"x\"").orElseThrow().toString().contains("\"x\""), key);
        }
    }

    @Test
    void aListIsToldByHowOftenEachOfItsValuesComesUp() {
        ScenarioText text = new ScenarioText(
                "far = { snr = [{ value = \"14 dB\", weight = 1 }, { value = \"8 dB\", weight = 2 }] }", Map.of());
        WrittenInput input = text.input("far.snr").orElseThrow();
        assertEquals(List.of("14 dB", "8 dB"), input.choices());
        assertEquals(List.of(0.25, 0.75), input.shares(new double[] {0.1, 0.5, 0.6, 0.9}));
        assertTrue(input.range(14, 8).matches("8\\.?0* to 14\\.?0* dB"), input.range(14, 8));
    }
}
