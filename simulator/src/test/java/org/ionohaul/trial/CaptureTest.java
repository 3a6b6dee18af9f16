package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.Reception;
import org.ionohaul.link.Message;
import org.ionohaul.net.AirSpan;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.waveform.Emission;
import org.ionohaul.waveform.SteadyReception;
import org.ionohaul.waveform.Waveform;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Two stations that don't hear each other call at the same instant over a path that does not fade: how often one is answered is what
 * the receiver makes of its power over noise and the other's, no more and no less. A robust call may be taken under a stronger one.
 */
final class CaptureTest {
    private static final int TRIALS = 400;
    private static final double OWN_DB = 15;

    /** The other one as strong as it must be for the model to have this one's call taken half of the time. */
    @ParameterizedTest
    @ValueSource(strings = {"patient-climber", "brisk-comb"})
    void oneOfTwoCallsIsTakenAsOftenAsItsSinrSays(String mode) {
        NetScenario any = net(mode, 0);
        Waveform call = new ModeWiring(any.groups().get(0).pair(), any.mode())
                .spec()
                .signals()
                .of(Message.CALL, 0);
        Emission emission = any.mode().emission();
        double otherDb = IntStream.rangeClosed(-100, 300)
                .mapToObj(it -> it / 10.0)
                .min(Comparator.comparing(it -> Math.abs(taken(call, emission, it) - 0.5)))
                .orElseThrow();
        double expected = taken(call, emission, otherDb);
        assertTrue(expected > 0.3 && expected < 0.7, mode + " at " + otherDb + " dB: " + expected);
        double error = Math.sqrt(expected * (1 - expected) / TRIALS);
        assertEquals(expected, observed(net(mode, otherDb)), 4 * error, mode + " at " + otherDb + " dB");
    }

    @Test
    void besideAWeakOneItIsTakenAndUnderAStrongOneNot() {
        assertEquals(1, observed(net("patient-climber", -20)), 4 * Math.sqrt(0.01 / TRIALS));
        assertEquals(0, observed(net("patient-climber", OWN_DB + 30)), 4 * Math.sqrt(0.01 / TRIALS));
    }

    /** A call of one frame is taken if it is found and decoded. */
    private static double taken(Waveform call, Emission emission, double otherDb) {
        double density =
                Decibels.toRatio(-emission.crestFactorDb()) * Reception.NOISE_BANDWIDTH_HZ / emission.bandwidthHz();
        Reception heard = new SteadyReception(OWN_DB - Decibels.ofRatio(1 + density * Decibels.toRatio(otherDb)));
        return call.detectionProbability(heard, 0) * call.decodingProbability(call.evidence(heard, 0, 0, 1));
    }

    /** The share of trials in which the gateway speaks to this one before that calls anew. */
    private static double observed(NetScenario net) {
        NetTrials trials = new NetTrials(net);
        int answered = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            List<AirSpan> own = trials.run(trial, true).spans().stream()
                    .filter(it -> it.from() == 1 || it.to() == 1)
                    .toList();
            assertEquals(0, own.get(0).fromNanos(), "both call at once");
            answered += own.size() > 1 && own.get(1).from() == 0 ? 1 : 0;
        }
        return answered / (double) TRIALS;
    }

    private static NetScenario net(String mode, double otherDb) {
        return new QuietNet(
                        mode,
                        Map.of(
                                "horizon",
                                "40 s",
                                "operators.redial",
                                "60 s",
                                "group.1.gateway.snr",
                                OWN_DB + " dB",
                                "group.2.gateway.snr",
                                otherDb + " dB"))
                .scenario();
    }
}
