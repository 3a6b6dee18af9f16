package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ionohaul.channel.End;
import org.ionohaul.channel.GroundWave;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.Spells;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ground wave, drop-outs, sporadic E and the difference from day to day, as a scenario states them. */
final class SkyWaveKeysTest {
    private final Path folder;

    SkyWaveKeysTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @Test
    void noneOfThemIsThereUnlessStated() throws ScenarioProblems {
        SkyConditions sky = drawn(plain(), 0.2);
        assertEquals(Spells.NONE, sky.dropOuts());
        assertEquals(Spells.NONE, sky.sporadicE());
        assertEquals(Optional.empty(), sky.groundWave());
        assertEquals(sky, drawn(plain(), 0.8));
    }

    @Test
    void aHeadingAloneMeansTheUsualValues() throws ScenarioProblems {
        SkyConditions sky = drawn(
                plain().with("[sky.drop-outs]", "")
                        .with("[sky.sporadic-e]", "")
                        .with("[sky.ground-wave]", "over-ground = '40 km'"),
                0.5);
        assertEquals(new Spells(300, 2, -30), sky.dropOuts());
        assertEquals(new Spells(7200, 1200, 10), sky.sporadicE());
        // 300 km up and down less 40 km over ground are 260 km, at the speed of light.
        assertEquals(260e3 / 299_792_458, sky.groundWave().orElseThrow().leadSeconds(), 1e-12);
        assertEquals(-10, sky.groundWave().orElseThrow().levelDb());
    }

    @Test
    void statedValuesAreTaken() throws ScenarioProblems {
        SkyConditions sky = drawn(
                plain().with("[sky.drop-outs]", "between = '1 min'\nlength = '5 s'\ndepth = '12 dB'")
                        .with("[sky.sporadic-e]", "between = '1 h'\nlength = '10 min'\ngain = '15 dB'")
                        .with("[sky.ground-wave]", "over-ground = '300 km'\nlevel = '-20 dB .. 0 dB'"),
                0.25);
        assertEquals(new Spells(60, 5, -12), sky.dropOuts());
        assertEquals(new Spells(3600, 600, 15), sky.sporadicE());
        assertEquals(new GroundWave(0, -15), sky.groundWave().orElseThrow());
    }

    /** One day for both directions: upper decile 6 dB over the median, lower 8 dB below (ITU-R P.842, from memory). */
    @ParameterizedTest
    @CsvSource({"0.1, -8", "0.5, 0", "0.9, 6"})
    void aDayIsTheSameForBothDirectionsAndLeavesTheGroundWaveAlone(double probability, double dayDb)
            throws ScenarioProblems {
        WrittenScenario written =
                onDays("mid-latitude").with("[sky.ground-wave]", "over-ground = '40 km'\nlevel = '-3 dB'");
        SkyConditions sky = drawn(written, probability);
        assertEquals(14 + dayDb, sky.near().snrDb(), 1e-9);
        assertEquals(11 + dayDb, sky.far().snrDb(), 1e-9);
        double ground = sky.near().snrDb() + sky.groundWave().orElseThrow().levelDb();
        assertEquals(14 - 3, ground, 1e-9, "the ground wave is as strong on every day");
        assertEquals(List.of("sky.day-to-day"), written.read().sky().uncertainKeys());
    }

    /** As a prediction tabulates them: the deciles come out as they were put in. */
    @ParameterizedTest
    @CsvSource({
        "5 dB above / 9 dB below",
        "'5 dB above, 9 dB below'",
        "'5,0 dB above/9 dB below'",
        " 5 dB above and 9 dB below "
    })
    void aDaysDecilesMayBeStated(String days) throws ScenarioProblems {
        WrittenScenario written = onDays(days);
        assertEquals(14 - 9, drawn(written, 0.1).near().snrDb(), 1e-9);
        assertEquals(14, drawn(written, 0.5).near().snrDb(), 1e-9);
        assertEquals(14 + 5, drawn(written, 0.9).near().snrDb(), 1e-9);
        assertEquals(List.of("sky.day-to-day"), written.read().sky().uncertainKeys());
    }

    @Test
    void aDayChangesTheSignalAndNotTheNoise() throws ScenarioProblems {
        Scenario scenario = onDays("high-latitude near muf")
                .replacing("[near]", "snr = \"14 dB\"", "signal = 'S9'\nnoise = '-100 dBm'")
                .read();
        Levels levels = scenario.sky().levels(End.NEAR, key -> 0.1).orElseThrow();
        assertEquals(-73 - 16, levels.signalDbm(), 1e-9);
        assertEquals(-100, levels.noiseDbm(), 1e-9);
        assertEquals(11, scenario.sky().conditions(key -> 0.1).near().snrDb(), 1e-9);
    }

    @Test
    void aDayMayBeANumberAndIsNeverAbsurd() throws ScenarioProblems {
        assertEquals(14 - 2, drawn(onDays("-4 dB .. 4 dB"), 0.25).near().snrDb(), 1e-9);
        double worst = drawn(onDays("mid-latitude"), 1e-12).near().snrDb();
        assertEquals(14 - 8 * 3 / 1.2815515655446004, worst, 1e-6, "cut off at three standard deviations");
    }

    @Test
    void whatIsDrawnTwiceIsWarnedOf() throws ScenarioProblems {
        WrittenScenario twice = onDays("mid-latitude").replacing("[near]", "14 dB", "14 dB ± 3 dB");
        assertEquals(
                List.of(
                        "\"mid-latitude\" stands beside near.snr, which is drawn as well: what both stand for counts twice"),
                warnings(twice));
        assertEquals(List.of(), warnings(onDays("mid-latitude")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "sky.day-to-day | mid-lattitude | \"mid-lattitude\" is not a valid choice | did you mean \"mid-latitude\"?",
                "sky.day-to-day | 8 | 8 has no unit | write it in quotation marks with its unit, such as \"14 dB\"",
                "sky.day-to-day | 6 above / 8 dB below | \"6\" has no unit | write a ratio in dB such as \"14 dB\" (units: dB)",
                "sky.day-to-day | 6 dB above / -8 dB below | \"6 dB above / -8 dB below\" tells no deciles | write both without a"
                        + " sign, from 0 to 100 dB, such as \"6 dB above / 8 dB below\"",
                "sky.day-to-day | 120 dB | must be within 100 dB, but is \"120 dB\" | ``",
                "sky.drop-outs.depth | -20 dB | must be above 0 dB | write it without a sign, such as \"20 dB\"; leave all of it"
                        + " out for none",
                "sky.drop-outs.depth | 120 dB | must be from 0 to 100 dB, but is \"120 dB\" | ``",
                "sky.drop-outs.length | 20 ms | must be from 0.1 s to ten million seconds, but is \"20 ms\" | ``",
                "sky.drop-outs.betwen | 5 min | there is no such key | did you mean \"sky.drop-outs.between\"?",
                "sky.sporadic-e.gain | 10 | 10 has no unit | write it in quotation marks with its unit, such as \"14 dB\"",
                "sky.ground-wave.over-ground | 400 km | is farther than the distance, which goes up to the ionosphere and down"
                        + " again | state how far apart the stations are over ground, or a longer distance",
                "sky.ground-wave.level | -10 dB ± 50 dB | must be within 100 dB, but is \"-10 dB ± 50 dB\" | every value that can"
                        + " be drawn must be possible: narrow the distribution"
            })
    void aSlipIsToldInWordsThatHelp(String key, String value, String message, String remedy) {
        WrittenScenario scenario = key.startsWith("sky.ground-wave")
                ? plain().with("[sky.ground-wave]", "over-ground = '40 km'")
                : plain();
        Problem problem = problem(scenario, Map.of(key, value));
        assertEquals(key, problem.key().replace("--set ", ""));
        assertEquals(message, problem.message());
        assertEquals(remedy, problem.remedy());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sky.drop-outs.between | 2 s | \"2 s\" is unusual: usually from 10 s to 24 h",
                "sky.drop-outs.length | 8 h | \"8 h\" is unusual: usually from 0.5 s to 6 h",
                "sky.drop-outs.depth | 1 dB | \"1 dB\" is unusual: usually from 3 dB to 60 dB",
                "sky.sporadic-e.gain | 60 dB | \"60 dB\" is unusual: usually from 3 dB to 40 dB",
                "sky.ground-wave.level | 50 dB | \"50 dB\" is unusual: usually from -40 dB to 40 dB",
                "sky.day-to-day | 30 dB | \"30 dB\" is unusual: usually from -20 dB to 20 dB"
            })
    void whatHardlyAnybodyMeansIsWarnedOf(String key, String value, String message) throws ScenarioProblems {
        WrittenScenario scenario = plain().with("[sky.ground-wave]", "over-ground = '40 km'");
        assertEquals(
                List.of(message),
                ScenarioReader.understand(SourceFiles.DISK, scenario.written(), Map.of(key, value)).warnings().stream()
                        .map(it -> it.told().message())
                        .toList());
    }

    @Test
    void aGroundWaveNeedsToBeToldHowFarItGoes() {
        List<Problem> problems =
                plain().with("[sky.ground-wave]", "level = '-3 dB'").problems();
        assertEquals("sky.ground-wave.over-ground", problems.get(0).key());
        assertTrue(problems.get(0).remedy().contains("over-ground = \"40 km\""), problems.get(0)::remedy);
    }

    private static Problem problem(WrittenScenario scenario, Map<String, String> changes) {
        try {
            ScenarioReader.read(scenario.written(), changes);
            throw new AssertionError("was read");
        } catch (ScenarioProblems e) {
            assertEquals(1, e.problems().size(), e::getMessage);
            return e.problems().get(0);
        }
    }

    private static List<String> warnings(WrittenScenario scenario) throws ScenarioProblems {
        return ScenarioReader.understand(SourceFiles.DISK, scenario.written(), Map.of()).warnings().stream()
                .map(it -> it.told().message())
                .toList();
    }

    private WrittenScenario plain() {
        return WrittenScenario.in(folder);
    }

    private WrittenScenario onDays(String days) {
        return plain().replacing("[sky]", "condition", "day-to-day = '" + days + "'\ncondition");
    }

    private static SkyConditions drawn(WrittenScenario scenario, double probability) throws ScenarioProblems {
        return scenario.read().sky().conditions(key -> probability);
    }
}
