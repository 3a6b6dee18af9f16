package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.ionohaul.channel.Reception;
import org.ionohaul.link.Signals;
import org.ionohaul.rate.LossCurves;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.waveform.SteadyReception;
import org.ionohaul.waveform.Waveform;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class BenchCurvesTest {
    private static final Path DEMO = Path.of("..", "scenarios", "river-watch.toml");
    /** A loss falls with the SNR but for what rounding does to it. */
    private static final double ROUNDING = 1e-12;

    @ParameterizedTest
    @ValueSource(strings = {"brisk-comb", "patient-climber", "slow-whistle", "m625-arq", "ax25-go-back-n"})
    void curvesTellWhatIsLostAtEveryLevelBeyondTheirEndsToo(String mode) throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(DEMO, Map.of("modes", "[\"" + mode + "\"]"));
        Signals signals = new LinkPlan(scenario, scenario.modes().get(0)).spec().signals();
        LossCurves curves = BenchCurves.of(signals);
        for (int dataRate = 1; dataRate <= signals.dataRateCount(); dataRate++) {
            Waveform waveform = signals.dataRate(dataRate);
            for (double levelDb = -40; levelDb <= 60; levelDb += 0.25) {
                Reception steady = new SteadyReception(levelDb);
                double lost = 1 - waveform.decodingProbability(waveform.evidence(steady, 0, 0, 1));
                double shownDb = waveform.meanSnrDb(steady, 0, 1);
                assertEquals(lost, curves.loss(dataRate, shownDb), ROUNDING, mode + " " + dataRate + " " + levelDb);
            }
        }
    }
}
