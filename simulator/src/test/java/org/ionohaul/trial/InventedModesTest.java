package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.ionohaul.channel.FadingCondition;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.session.SessionResult;
import org.ionohaul.waveform.BurstShape;
import org.ionohaul.waveform.Waveforms;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo's modes: how tough their small bursts are, and how they compare on an evening as people tell of. */
final class InventedModesTest {
    private static final Path SCENARIOS = Path.of("..", "scenarios");
    private static final int TRIALS = 64;

    /**
     * Replies come through where data rate 1 is long lost: a quarter of its rate is 6 dB. Of tones told by their energy weak
     * ones lose 2 dB of it; a short frame is found before data rate 1 is, which wins others one or two.
     */
    @ParameterizedTest
    @ValueSource(strings = {"brisk-comb", "steady-wagon", "slow-whistle"})
    void theSmallBurstsAreSomeSixDecibelsTougherThanDataRateOne(String name) throws ScenarioProblems {
        Mode mode = ScenarioReader.readMode(SCENARIOS.resolve("modes").resolve(name + ".toml"));
        double dataDb = needDb(mode, mode.dataRates().get(0));
        for (BurstShape small : List.of(mode.acknowledgement(), mode.call(), mode.control())) {
            double tougherDb = dataDb - needDb(mode, small);
            assertTrue(tougherDb > 3.5 && tougherDb < 8.5, name + ": " + tougherDb);
        }
    }

    /** Returns the SNR at which half of the bursts of one frame are lost on a steady path, found or not. */
    private static double needDb(Mode mode, BurstShape burst) {
        return new LossOnPath(
                        Waveforms.of(burst, mode.emission(), mode.arq().combining()),
                        new FadingSkies(
                                FadingCondition.FLAT.paths(), mode.emission().passband(), 1, 1))
                .needDb(0.5);
    }

    /**
     * What people tell of such evenings (common practice, no source; ratios only): the most capable modes need 6 to 8 minutes
     * for 100 kB, one of the middle class with several carriers about three times as long, a basic one six to seven times; for
     * a sixth of it, fetched at the noisy end, the most capable need a third of their time, the others five times that. The
     * bands are wide, since nobody counted. What is not met: here the most capable need half of their time for the sixth, and the
     * others little more than twice that. By what is told, a byte costs a basic mode 1.5 times as much at the noisy end as at the
     * quiet one; Steady wagon it costs 1.1 times as much, since the speed that its long file asks for is carried by a code
     * that hardly notices the noise: a faster and thinner code would make it quicker on the long file first. Brisk comb comes
     * nearer (2.8 times; told 3.3).
     *
     * <p>Times are compared under each sky. Were the middle ratio beyond a band, at most half of the trials would lie on its
     * inner side, with a standard error of half the root of their number: three of those more, 44 of 64, must lie there.
     */
    @Test
    void onAnEveningTheModesTakeTheirTimesAsPeopleTellOfThem() throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(SCENARIOS.resolve("lantern-school.toml"), Map.of());
        assertEquals(
                List.of("brisk-comb", "patient-climber", "steady-wagon"),
                scenario.modes().stream().map(Mode::name).toList());
        Trials trials = new Trials(scenario);
        List<double[]> evenings = new ArrayList<>();
        for (long trial = 0; trial < TRIALS; trial++) {
            evenings.add(trials.run(trial).stream()
                    .mapToDouble(InventedModesTest::seconds)
                    .toArray());
        }
        double[] one = evenings.stream().mapToDouble(it -> 1).toArray();
        double[] comb = mode(evenings, 0);
        double[] climber = mode(evenings, 1);
        double[] wagon = mode(evenings, 2);
        within("climber, minutes", climber, one, 5 * 60, 10 * 60);
        within("comb over climber", comb, climber, 1.8, 4);
        within("wagon over climber", wagon, climber, 4, 10);
        within("climber, a sixth of it", mode(evenings, 4), climber, 0.3, 0.7);
        within("comb over climber, a sixth", mode(evenings, 3), mode(evenings, 4), 1.5, 4);
        within("wagon over climber, a sixth", mode(evenings, 5), mode(evenings, 4), 1.4, 4);
        assertTrue(delivered(comb) > 0.9 && delivered(climber) > 0.9, "a factor, not a lost link");
    }

    private static double seconds(SessionResult result) {
        return result.deliveredNanos().isPresent()
                ? result.deliveredNanos().getAsLong() / 1e9
                : Double.POSITIVE_INFINITY;
    }

    private static double[] mode(List<double[]> evenings, int which) {
        return evenings.stream().mapToDouble(it -> it[which]).toArray();
    }

    private static double delivered(double[] seconds) {
        return Arrays.stream(seconds).filter(Double::isFinite).count() / (double) TRIALS;
    }

    private static void within(String what, double[] seconds, double[] others, double low, double high) {
        int above = 0;
        int below = 0;
        for (int i = 0; i < TRIALS; i++) {
            above += seconds[i] > low * others[i] ? 1 : 0;
            below += seconds[i] < high * others[i] ? 1 : 0;
        }
        double enough = TRIALS / 2.0 + 3 * Math.sqrt(TRIALS) / 2;
        assertTrue(above >= enough, what + ": above " + low + " in " + above);
        assertTrue(below >= enough, what + ": below " + high + " in " + below);
    }
}
