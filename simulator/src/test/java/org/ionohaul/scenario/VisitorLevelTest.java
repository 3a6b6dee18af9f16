package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Interference;
import org.ionohaul.channel.Over;
import org.ionohaul.channel.Sky;
import org.ionohaul.channel.SkyWatch;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A visitor has a level of its own: what becomes of the noise does not move it, unless the file says so. */
final class VisitorLevelTest {
    private static final double[] PROBABILITIES = {0.02, 0.3, 0.5, 0.7, 0.98};

    private final Path folder;

    VisitorLevelTest(@TempDir Path folder) {
        this.folder = folder;
    }

    /** S9 is -73 dBm and an S-unit 6 dB (IARU Region 1 R.1). */
    @ParameterizedTest
    @CsvSource({"-110 dBm, S6, -91", "-90 dBm, S6, -91", "-110 dBm, -97 dBm, -97", "-90 dBm, -97 dBm, -97"})
    void twentyDecibelsMoreNoiseLeaveAVisitorOfItsOwnLevelAlone(String noise, String median, double dbm)
            throws ScenarioProblems {
        assertEquals(dbm, visitorDbm(scenario(noise, median), 0.5), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        "-100 dBm ± 6 dB, 9 dB, -91",
        "-100 dBm ± 6 dB, S6, -91",
        "-110 dBm .. -90 dBm, 9 dB, -91",
        "-110 dBm .. -90 dBm, S6, -91"
    })
    void noiseThatIsDrawnLeavesTheVisitorAlone(String noise, String median, double dbm) throws ScenarioProblems {
        for (double probability : PROBABILITIES) {
            assertEquals(dbm, visitorDbm(scenario(noise, median), probability), 1e-9);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"9 dB over noise", "9 dB over the noise"})
    void aVisitorOverTheNoiseMovesWithIt(String median) throws ScenarioProblems {
        Scenario scenario = scenario("-110 dBm .. -90 dBm", median);
        assertEquals(9, visitor(scenario, 0.02).medianDb(), 1e-9);
        assertEquals(9, visitor(scenario, 0.98).medianDb(), 1e-9);
        assertEquals(0.96 * 20, visitorDbm(scenario, 0.98) - visitorDbm(scenario, 0.02), 1e-9);
    }

    /** The middle of rural noise of ITU-R P.372 at 7 MHz is -96.0 dBm; a quiet band's visitors are as strong as that. */
    @Test
    void crowdsOnABandKeepTheirLevelWhenTheNoiseOfACategoryIsDrawn() throws ScenarioProblems {
        Scenario scenario = plain().replacing(
                        "[near]",
                        "snr = \"14 dB\"",
                        "signal = \"S9\"\nnoise-environment = \"rural\"\ncongestion = \"quiet-band\"")
                .replacing("[sky]", "condition", "frequency = \"7 MHz\"\ncondition")
                .read();
        double middleDbm = -174 + 67.2 - 27.7 * Math.log10(7) + 10 * Math.log10(3000);
        for (double probability : PROBABILITIES) {
            assertEquals(middleDbm, visitorDbm(scenario, probability), 1e-6);
        }
    }

    /** The same chance, other noise: each over is as strong in dBm as before, so the sky moves no interference. */
    @ParameterizedTest
    @CsvSource({"9 dB, 0", "S6, 0", "9 dB over noise, 1"})
    void whatIsHeardOnTheAirMovesWithTheNoiseOnlyIfTheFileSaysSo(String median, double moved) throws ScenarioProblems {
        Scenario scenario = scenario("-110 dBm .. -90 dBm", median);
        List<Over> quiet = overs(scenario, 0.1);
        List<Over> noisy = overs(scenario, 0.9);
        assertTrue(quiet.size() > 20);
        assertEquals(quiet.size(), noisy.size());
        for (int i = 0; i < quiet.size(); i++) {
            double byDb = 10 * Math.log10(noisy.get(i).power() / quiet.get(i).power()) + 16;
            assertEquals(16 * moved, byDb, 1e-9);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "'S5 .. S7' | 0.25 | -94",
                "'-97 dBm ± 3 dB' | 0.5 | -97",
                "'6..12 dB' | 0.25 | -92.5",
                "'6 dB .. 12 dB over noise' | 0.25 | -92.5",
                "'9 ± 3 dB over noise' | 0.5 | -91",
                "[{ value = 'S5', weight = 1 }, { value = 'S7', weight = 1 }] | 0.25 | -97",
                "[{ value = '6 dB', weight = 1 }, { value = '12 dB', weight = 1 }] | 0.75 | -88",
                "[{ value = '6 dB over noise', weight = 1 }, { value = '12 dB over noise', weight = 1 }] | 0.75 | -88"
            })
    void aLevelMayBeUncertainInEveryWay(String median, double probability, double dbm) throws ScenarioProblems {
        String changed = VISITOR.formatted("MEDIAN").replace("\"MEDIAN\"", median);
        Scenario scenario = plain().replacing("[near]", "snr = \"14 dB\"", "signal = \"S9\"\nnoise = \"-100 dBm\"")
                .with("[[near.interference]]", changed)
                .read();
        assertEquals(dbm, visitorDbm(scenario, probability), 1e-9);
        assertEquals(List.of("near.interference.1.median"), scenario.sky().uncertainKeys());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "S12 | \"S12\" is no meter reading | a meter shows S1 to S9, then S9+10 and so on up to S9+99",
                "-9 dbm | unit \"dbm\" in \"-9 dbm\" is unknown | write what the meter shows, such as \"S7\", or a level such as"
                        + " \"-97 dBm\"",
                "9 | \"9\" has no unit | write their level, such as \"S6\" or \"-97 dBm\", or by how much they are over the noise,"
                        + " \"9 dB\" or \"9 dB over noise\"",
                "9 dB over nosie | \"9 dB over nosie\" is not a ratio in dB | write their level, such as \"S6\" or \"-97 dBm\", or"
                        + " by how much they are over the noise, \"9 dB\" or \"9 dB over noise\"",
                "10 dBm | \"10 dBm\" can't be | no receiver is told of less than -180 dBm or stands more than 0 dBm"
            })
    void aSlipIsToldInWordsThatHelp(String median, String message, String remedy) {
        List<Problem> problems = written("-100 dBm", median).problems();
        assertEquals(message, problems.get(0).message());
        assertEquals(remedy, problems.get(0).remedy());
        assertEquals("near.interference.1.median", problems.get(0).key());
        assertEquals(1, problems.size(), problems::toString);
    }

    @Test
    void aLevelOfItsOwnNeedsANoiseToCompareWith() {
        List<Problem> problems =
                plain().with("[[near.interference]]", VISITOR.formatted("S6")).problems();
        assertEquals(
                List.of("is a level of its own, but how strong the noise is here is not stated"),
                problems.stream().map(Problem::message).toList());
        assertTrue(problems.get(0).line() > 1 && problems.get(0).remedy().startsWith("state signal and noise"));
    }

    @ParameterizedTest
    @CsvSource({"S9+40, 1", "S9+20, 0", "80 dB, 1", "-40 dB over noise, 1"})
    void aVisitorFarFromTheNoiseIsWarnedOf(String median, int warnings) throws ScenarioProblems {
        List<Warning> told = ScenarioReader.understand(
                        SourceFiles.DISK, written("-100 dBm", median).written(), Map.of())
                .warnings();
        assertEquals(warnings, told.size(), told::toString);
        told.forEach(it -> assertTrue(it.text().contains("is unusual: usually from -30 dB to 60 dB"), it.text()));
    }

    private static final String VISITOR = """
            visits = "60 /h"
            visit = "1 min"
            over = "10 s"
            pause = "10 s"
            median = "%s"
            deviation = "0 dB"
            band-share = "40 %%"
            """;

    private WrittenScenario plain() {
        return WrittenScenario.in(folder);
    }

    private WrittenScenario written(String noise, String median) {
        return plain().replacing("[near]", "snr = \"14 dB\"", "signal = \"S9\"\nnoise = \"" + noise + "\"")
                .with("[[near.interference]]", VISITOR.formatted(median));
    }

    private Scenario scenario(String noise, String median) throws ScenarioProblems {
        return written(noise, median).read();
    }

    private static Interference visitor(Scenario scenario, double probability) {
        return scenario.sky()
                .conditions(key -> probability)
                .near()
                .interference()
                .get(0);
    }

    private static double visitorDbm(Scenario scenario, double probability) {
        double noiseDbm = scenario.sky()
                .levels(End.NEAR, key -> probability)
                .orElseThrow()
                .noiseDbm();
        return visitor(scenario, probability).medianDb() + noiseDbm;
    }

    private static List<Over> overs(Scenario scenario, double probability) {
        Sky sky = new Sky(scenario.sky().conditions(key -> probability), new TrialStreams(1, 0));
        return new SkyWatch(sky, End.NEAR, 3_600_000_000_000L).overs();
    }
}
