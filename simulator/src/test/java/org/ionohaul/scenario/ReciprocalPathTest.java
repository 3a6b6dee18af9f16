package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.ionohaul.channel.End;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a path takes is the same both ways, antennas included: where a file gives both powers, one loss is drawn. */
final class ReciprocalPathTest {
    private final Path folder;

    ReciprocalPathTest(@TempDir Path folder) {
        this.folder = folder;
    }

    /** 20 W are 43.01 dBm and 100 W are 50, so whoever sends 100 W is heard 6.99 dB more strongly, whatever the path takes. */
    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.1, 0.5, 0.9, 0.999})
    void oneSignalAndBothPowersGiveTheOtherSignal(double probability) throws ScenarioProblems {
        Scenario scenario =
                scenario("signal = 'S7 ± 6 dB'\nantenna-gain = '-9 dBi'", "").read();
        assertEquals(
                6.9897, levelDbm(scenario, End.NEAR, probability) - levelDbm(scenario, End.FAR, probability), 1e-4);
        assertEquals(List.of("near.signal"), scenario.sky().uncertainKeys());
        assertEquals(-85, levelDbm(scenario, End.NEAR, 0.5), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.1, 0.5, 0.9, 0.999})
    void aBudgetDrawsItsLossesAndAntennasOnceForBothWays(double probability) throws ScenarioProblems {
        Scenario scenario = scenario(
                        "antenna-gain = '-9 dBi .. 0 dBi'", "losses = '20 dB ± 6 dB'\nfrequency = '3.6 MHz'")
                .read();
        Draws draws = key -> key.startsWith("sky") ? probability : 1 - probability;
        double near = scenario.sky().levels(End.NEAR, draws).orElseThrow().signalDbm();
        double far = scenario.sky().levels(End.FAR, draws).orElseThrow().signalDbm();
        assertEquals(6.9897, near - far, 1e-4);
    }

    @Test
    void twoSignalsAreEachDrawnAsTheyAreRead() throws ScenarioProblems {
        Scenario scenario = scenario("signal = 'S7 ± 6 dB'", "")
                .replacing("[far]", "power", "signal = 'S6 ± 3 dB'\npower")
                .read();
        assertEquals(List.of("far.signal", "near.signal"), scenario.sky().uncertainKeys());
    }

    @Test
    void lossesBesideOneSignalAndBothPowersAreWarnedOf() throws ScenarioProblems {
        WrittenScenario scenario = scenario("signal = 'S7'", "losses = '16 dB'");
        List<Warning> warnings = ScenarioReader.understand(SourceFiles.DISK, scenario.written(), Map.of())
                .warnings();
        assertEquals(1, warnings.size(), warnings::toString);
        assertTrue(
                warnings.get(0)
                        .text()
                        .contains(
                                "sky.losses: \"16 dB\" is not used: near.signal and both powers already say what the path takes"),
                warnings.get(0)::text);
    }

    private WrittenScenario scenario(String near, String sky) {
        return WrittenScenario.in(folder)
                .replacing("[near]", "snr = \"14 dB\"", "power = '20 W'\nnoise = '-110 dBm'\n" + near)
                .replacing("[far]", "snr = \"11 dB\"", "power = '100 W'\nnoise = '-100 dBm'")
                .replacing("[sky]", "condition", sky + "\ncondition");
    }

    private static double levelDbm(Scenario scenario, End end, double probability) {
        return scenario.sky().levels(end, key -> probability).orElseThrow().signalDbm();
    }
}
