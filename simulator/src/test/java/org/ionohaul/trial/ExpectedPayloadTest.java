package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.ionohaul.link.ArqRules;
import org.ionohaul.link.ArqScheme;
import org.ionohaul.link.Signals;
import org.ionohaul.waveform.BurstShape;
import org.ionohaul.waveform.Coding;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.Emission;
import org.ionohaul.waveform.ModelledFrame;
import org.ionohaul.waveform.Modulation;
import org.ionohaul.waveform.Receiver;
import org.ionohaul.waveform.SteadyReception;
import org.ionohaul.waveform.Waveform;
import org.ionohaul.waveform.Waveforms;
import org.junit.jupiter.api.Test;

final class ExpectedPayloadTest {
    /** 100 bytes uncoded at 800 bit/s: a second a frame, after a second of preamble. */
    private static final Waveform WAVEFORM = Waveforms.of(
            new BurstShape(
                    1,
                    -20,
                    ModelledFrame.ofBytes(
                            Coding.oneByOne(Modulation.BPSK, 800, 1), new Receiver(0, 0, 0, 900), 0, 100, 0, 0)),
            new Emission(2400, 0),
            Combining.NONE);

    @Test
    void theOracleCountsOnNoLongerOversThanTheRulesAllow() {
        assertEquals(400 / 5.0, bytesPerSecond(ArqScheme.SELECTIVE_REPEAT, 100), 1e-3);
        assertEquals(200 / 3.0, bytesPerSecond(ArqScheme.SELECTIVE_REPEAT, 3.5), 1e-3);
        assertEquals(100 / 2.0, bytesPerSecond(ArqScheme.STOP_AND_WAIT, 100), 1e-3);
    }

    /** Asks for overs of four frames on a path that loses none. */
    private static double bytesPerSecond(ArqScheme scheme, double longestOverSeconds) {
        ArqRules rules = new ArqRules(
                scheme,
                8,
                4,
                8,
                Math.round(longestOverSeconds * 1e9),
                Combining.NONE,
                0,
                ArqRules.AnswerToSilence.REPEAT,
                5,
                false,
                0,
                0);
        Signals signals = new Signals(List.of(WAVEFORM), WAVEFORM, WAVEFORM, WAVEFORM);
        return new ExpectedPayload(signals, new SteadyReception(60), rules).payloadBytesPerSecond(1, 0);
    }
}
