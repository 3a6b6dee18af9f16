package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.ionohaul.link.ArqRules;
import org.ionohaul.link.ArqScheme;
import org.ionohaul.link.ModeSpec;
import org.ionohaul.link.Signals;
import org.ionohaul.link.StationTimes;
import org.ionohaul.link.Timing;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.rate.RatePolicy;
import org.ionohaul.rate.RatePolicyRules;
import org.ionohaul.waveform.BurstShape;
import org.ionohaul.waveform.Coding;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.Emission;
import org.ionohaul.waveform.ModelledFrame;
import org.ionohaul.waveform.Modulation;
import org.ionohaul.waveform.Receiver;
import org.ionohaul.waveform.Waveform;
import org.ionohaul.waveform.Waveforms;
import org.junit.jupiter.api.Test;

/** Two data rates of 100 and 300 bytes a frame at 800 bit/s; overs of up to two frames, short bursts of a second and a frame. */
final class YardstickTest {
    private static final Signals SIGNALS = signals();
    private static final ArqRules ARQ = new ArqRules(
            ArqScheme.SELECTIVE_REPEAT,
            2,
            2,
            2,
            3_600_000_000_000L,
            Combining.NONE,
            0,
            ArqRules.AnswerToSilence.REPEAT,
            5,
            false,
            0,
            0);

    private static Signals signals() {
        Waveform single = waveform(100);
        return new Signals(List.of(single, waveform(300)), single, single, single);
    }

    private static Waveform waveform(int bytes) {
        return Waveforms.of(
                new BurstShape(
                        1,
                        -20,
                        ModelledFrame.ofBytes(
                                Coding.oneByOne(Modulation.BPSK, 800, 1), new Receiver(0, 0, 0, 900), 0, bytes, 0, 0)),
                new Emission(2400, 0),
                Combining.NONE);
    }

    private static Timing timing(RatePolicyRules rules) {
        StationTimes atOnce = new StationTimes(0, 0, 0, 0);
        return new Timing(new ModeSpec(SIGNALS, ARQ, rules), atOnce, atOnce, 0);
    }

    /** An over lasts 1 s + 2 x 1 s and its acknowledgement 2 s: three fifths of the cycle are over. */
    @Test
    void whatTheOracleExpectsOfAnOverIsSpreadOverTheWholeCycle() {
        Yardstick yardstick = new Yardstick(timing(new RatePolicyRules.Fixed(1)), (dataRate, atNanos) -> 50);
        assertEquals(30, yardstick.bytesPerSecond(1, 0), 1e-9);
        assertEquals(50 * 7 / 9.0, yardstick.bytesPerSecond(2, 0), 1e-9);
    }

    @Test
    void theOmniscientPolicyTakesWhatTheYardstickExpectsMostOf() {
        Yardstick yardstick = new Yardstick(
                timing(new RatePolicyRules.Omniscient(1)), (dataRate, atNanos) -> dataRate == 1 + atNanos % 2 ? 50 : 1);
        RatePolicy policy = RatePolicies.of(
                new RatePolicyRules.Omniscient(1),
                yardstick.timing().designRates(BenchCurves.of(SIGNALS)),
                new TrialStreams(1, 0).open(Purpose.POLICY, 0),
                () -> new OmniscientPolicy(yardstick));
        assertEquals(1, policy.chooseDataRate(2));
        assertEquals(2, policy.chooseDataRate(3));
        assertEquals("the oracle expects 38.9 bytes a second", policy.reason());
    }

    @Test
    void noPolicyThatAStationCouldFollowAsksForTheYardstick() {
        for (RatePolicyRules rules : List.of(
                new RatePolicyRules.Fixed(1),
                new RatePolicyRules.Count(1, 1, 1, 0.5, false),
                new RatePolicyRules.ErrorRate(1, 0.1, 0.4, 0.5),
                new RatePolicyRules.SnrLookup(1, 0.1, 1, 0.5, 2),
                new RatePolicyRules.ExpectedAirtime(1, 0.1, 0.3),
                new RatePolicyRules.LatentSnr(1, 6, 0.5, 2))) {
            RatePolicies.of(
                    rules,
                    timing(rules).designRates(BenchCurves.of(SIGNALS)),
                    new TrialStreams(1, 0).open(Purpose.POLICY, 0),
                    () -> {
                        throw new AssertionError(rules + " asks what the sky will do");
                    });
        }
    }

    @Test
    void aStartDataRateThatTheModeHasNotIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> timing(new RatePolicyRules.Fixed(3)));
    }
}
