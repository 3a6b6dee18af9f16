package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.ionohaul.channel.FrequencyError;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.waveform.Equaliser;
import org.ionohaul.waveform.ModelledFrame;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far stations are off the frequency, and what modes take of it, as files state them. */
final class TuningKeysTest {
    private final Path folder;

    TuningKeysTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @Test
    void stationsAreOnTheFrequencyUnlessStatedAndAHeadingAloneDrawsAUsualError() throws ScenarioProblems {
        assertEquals(FrequencyError.NONE, drawn(plain(), 0.9).nearFrequency());
        WrittenScenario usual = plain().with("[near.tuning]", "");
        assertEquals(FrequencyError.NONE, drawn(usual, 0.5).nearFrequency());
        // Cut off at three deviations of 20 Hz: 5 in 6 lie below one deviation, nearly.
        assertEquals(20, drawn(usual, 0.8413).nearFrequency().offsetHz(), 0.1);
        assertEquals(List.of("near.tuning.offset"), usual.read().sky().uncertainKeys());
    }

    @Test
    void statedErrorsAreTaken() throws ScenarioProblems {
        WrittenScenario scenario = plain().with("[near.tuning]", "offset = '-12 Hz'\ndrift = '-2 Hz/min .. 2 Hz/min'")
                .with("[far.tuning]", "offset = '0.1 kHz'");
        SkyConditions sky = drawn(scenario, 0.75);
        assertEquals(new FrequencyError(-12, 1), sky.nearFrequency());
        assertEquals(new FrequencyError(100, 0), sky.farFrequency());
        assertEquals(112 - 10, sky.frequencyErrorHz(600_000_000_000L), 1e-9);
    }

    @Test
    void aModeTakes75HertzUnlessItSaysOtherwise() throws ScenarioProblems {
        Mode usual = plain().read().modes().get(0);
        assertEquals(75, usual.dataRates().get(0).frame().frequencyToleranceHz());
        Path file = plain().written();
        Map<String, String> changes = Map.of("modes.brisk-comb.waveform.frequency-tolerance", "30 Hz");
        Mode picky = ScenarioReader.read(file, changes).modes().get(0);
        assertEquals(30, picky.dataRates().get(0).frame().frequencyToleranceHz());
        assertEquals(30, picky.acknowledgement().frame().frequencyToleranceHz());
    }

    @Test
    void aModeSaysWhatItsEqualiserIs() throws ScenarioProblems {
        assertEquals(Equaliser.BY_PARTS, equaliser(plain().read().modes().get(0)));
        Map<String, String> changes = Map.of("modes.brisk-comb.waveform.equaliser", "linear");
        Mode plainer = ScenarioReader.read(plain().written(), changes).modes().get(0);
        assertEquals(Equaliser.LINEAR, equaliser(plainer));
    }

    private static Equaliser equaliser(Mode mode) {
        return ((ModelledFrame) mode.dataRates().get(0).frame()).receiver().equaliser();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "near.tuning.offset | 20 | 20 has no unit | write it in quotation marks with its unit, such as \"2.4 kHz\"",
                "near.tuning.offset | 20 kHz | must be within 10 kHz, but is \"20 kHz\" | ``",
                "near.tuning.offset | 2 ppm | unit \"ppm\" in \"2 ppm\" is unknown | write a frequency such as \"2.4 kHz\" (units:"
                        + " Hz, kHz, MHz, mHz)",
                "near.tuning.drift | 1 Hz | \"1 Hz\" is a frequency, not a drift | write a drift such as \"1 Hz/min\" (units:"
                        + " Hz/min)",
                "near.tuning.drft | 1 Hz/min | there is no such key | did you mean \"near.tuning.drift\"?",
                "modes.brisk-comb.waveform.frequency-tolerance | 20 kHz | must be from 0 to 10 kHz, but is \"20 kHz\" | ``"
            })
    void aSlipIsToldInWordsThatHelp(String key, String value, String message, String remedy) {
        Path file = plain().written();
        List<Problem> problems = assertThrows(
                        ScenarioProblems.class, () -> ScenarioReader.read(file, Map.of(key, value)))
                .problems();
        assertEquals(message, problems.get(0).message());
        assertEquals(remedy, problems.get(0).remedy());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "near.tuning.offset | 300 Hz | \"300 Hz\" is unusual: usually from -200 Hz to 200 Hz",
                "near.tuning.drift | 30 Hz/min | \"30 Hz/min\" is unusual: usually from -20 Hz/min to 20 Hz/min",
                "modes.brisk-comb.waveform.frequency-tolerance | 600 Hz | \"600 Hz\" is unusual: usually from 0 Hz to 500 Hz"
            })
    void whatHardlyAnybodyMeansIsWarnedOf(String key, String value, String message) throws ScenarioProblems {
        assertEquals(
                List.of(message),
                ScenarioReader.understand(SourceFiles.DISK, plain().written(), Map.of(key, value)).warnings().stream()
                        .map(it -> it.told().message())
                        .distinct()
                        .toList());
    }

    private WrittenScenario plain() {
        return WrittenScenario.in(folder);
    }

    private static SkyConditions drawn(WrittenScenario scenario, double probability) throws ScenarioProblems {
        return scenario.read().sky().conditions(key -> probability);
    }
}
