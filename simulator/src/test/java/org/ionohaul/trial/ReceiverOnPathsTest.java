package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.ionohaul.channel.PropagationPath;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.waveform.Waveforms;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What delays, echoes and motion cost shipped modes, from the sky to the lost frame. A tenth of 400 bursts is known to 0.015,
 * some 0.3 dB; on the same skies differences are known better, but paths of another delay fade otherwise.
 */
final class ReceiverOnPathsTest {
    private static final Path MODES = Path.of("..", "scenarios", "modes");
    private static final int BURSTS = 400;
    private static final long SEED = 1;
    private static final double THREE_ERRORS_DB = 3 * 0.3;

    @ParameterizedTest
    @ValueSource(strings = {"brisk-comb", "steady-wagon", "patient-climber"})
    void withinAReceiversReachNoDelayIsHarderThanAnother(String mode) throws ScenarioProblems {
        // 3.55 and 7.1 ms turn sub-bands 281 Hz apart all alike: a receiver that looks no closer needs 4 to 8 dB more
        // there.
        double[] needs = new double[5];
        double[] delays = {2e-3, 3.55e-3, 5e-3, 6.5e-3, 7e-3};
        for (int i = 0; i < delays.length; i++) {
            needs[i] = needDb(mode, 1, steady(0.5), echo(delays[i], 0, 0, 0.5));
        }
        double least = Arrays.stream(needs).min().orElseThrow();
        double most = Arrays.stream(needs).max().orElseThrow();
        assertTrue(most - least < THREE_ERRORS_DB, () -> Arrays.toString(needs));
    }

    @Test
    void aLateEchoCountsByItsPower() throws ScenarioProblems {
        // An echo beyond the equaliser's reach: 30 dB down it is no matter, 10 dB down it is noise 10 dB below, as
        // strong as
        // the signal it leaves nothing to decode.
        double alone = needDb("steady-wagon", 1, steady(1));
        assertEquals(alone, needDb("steady-wagon", 1, steady(1), echo(9e-3, -30, 0, 1)), 0.1);
        assertEquals(alone, needDb("steady-wagon", 1, steady(1), echo(9e-3, -20, 0, 1)), 0.3);
        double tenBelow = needDb("steady-wagon", 1, steady(1), echo(9e-3, -10, 0, 1));
        assertTrue(tenBelow > alone + 0.5 && tenBelow < alone + 3, alone + ", " + tenBelow);
        assertEquals(Double.POSITIVE_INFINITY, needDb("steady-wagon", 1, steady(1), echo(9e-3, 0, 0, 1)));
    }

    @Test
    void aBeatBetweenPathsIsMotionThatMustBeFollowed() throws ScenarioProblems {
        // Steady wagon looks at the path every 29 ms, Brisk comb every 114: a beat of 4 Hz is slow for the one, half a
        // turn for the
        // other, and one of 40 Hz more than a turn for both.
        double still = needDb("steady-wagon", 1, steady(0.1), echo(2e-3, 0, 0, 0.1));
        assertEquals(still, needDb("steady-wagon", 1, steady(0.1), echo(2e-3, 0, 4, 0.1)), THREE_ERRORS_DB);
        assertEquals(Double.POSITIVE_INFINITY, needDb("steady-wagon", 1, steady(0.1), echo(2e-3, 0, 40, 0.1)));
        double comb = needDb("brisk-comb", 1, steady(0.1), echo(2e-3, 0, 0, 0.1));
        assertTrue(needDb("brisk-comb", 1, steady(0.1), echo(2e-3, 0, 4, 0.1)) > comb + 2);
        assertEquals(Double.POSITIVE_INFINITY, needDb("brisk-comb", 1, steady(0.1), echo(2e-3, 0, 40, 0.1)));
    }

    /** Motion makes an error in proportion to the mean power: a floor that no signal is above. */
    @ParameterizedTest(name = "{0} Hz, {1} dB: {2} to {3} lost")
    @CsvSource({"1, 30, 0, 0.02", "2, 30, 0.08, 1", "2, 60, 0.08, 1", "5, 60, 0.99, 1"})
    void onAFastPathADenseDataRateLosesFramesHoweverStrongTheSignal(
            double spreadHz, double snrDb, double least, double most) throws ScenarioProblems {
        double loss = bench("brisk-comb", 5, steady(spreadHz), echo(2e-3, 0, 0, spreadHz))
                .loss(snrDb);
        assertTrue(loss >= least && loss <= most, () -> loss + " lost");
    }

    @Test
    void theFasterThePathTheHarderALongPreambleIsFound() throws ScenarioProblems {
        // A correlator over 0.9 s: half of it is lost to a spread of about 1 Hz, more to each faster one.
        double before = Double.NEGATIVE_INFINITY;
        for (double spreadHz : new double[] {1, 3, 10, 30}) {
            double need = needDb("patient-climber", 1, steady(spreadHz), echo(2e-3, 0, 0, spreadHz));
            double slower = before;
            assertTrue(need > slower + 1, () -> need + " dB at " + spreadHz + " Hz after " + slower);
            before = need;
        }
    }

    private static PropagationPath steady(double spreadHz) {
        return new PropagationPath(0, 0, 0, spreadHz);
    }

    private static PropagationPath echo(double delaySeconds, double powerDb, double shiftHz, double spreadHz) {
        return new PropagationPath(delaySeconds, powerDb, shiftHz, spreadHz);
    }

    private static double needDb(String mode, int dataRate, PropagationPath... paths) throws ScenarioProblems {
        return bench(mode, dataRate, paths).needDb(0.1);
    }

    private static LossOnPath bench(String name, int dataRate, PropagationPath... paths) throws ScenarioProblems {
        Mode mode = ScenarioReader.readMode(MODES.resolve(name + ".toml"));
        return new LossOnPath(
                Waveforms.of(
                        mode.dataRates().get(dataRate - 1),
                        mode.emission(),
                        mode.arq().combining()),
                new FadingSkies(List.of(paths), mode.emission().passband(), BURSTS, SEED));
    }
}
