package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.Reception;
import org.ionohaul.link.Message;
import org.ionohaul.net.AirSpan;
import org.ionohaul.scenario.NetReader;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.waveform.Emission;
import org.ionohaul.waveform.SteadyReception;
import org.ionohaul.waveform.Waveform;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Two stations that don't hear each other call at the same instant over a path that does not fade: how often the stronger one is
 * answered is what the receiver makes of its power over noise and the other's, no more and no less.
 */
final class CaptureTest {
    private static final Path MODES = Path.of("..", "scenarios", "modes");
    private static final int TRIALS = 400;
    private static final double STRONG_DB = 15;

    /** Weaker and weaker, until the model has the stronger one's call taken half of the time. */
    @ParameterizedTest
    @ValueSource(strings = {"patient-climber", "brisk-comb"})
    void theStrongerOfTwoCallsIsTakenAsOftenAsItsSinrSays(String mode) throws IOException, ScenarioProblems {
        NetScenario any = net(mode, 0);
        Waveform call = new ModeWiring(any.groups().get(0).pair(), any.mode())
                .spec()
                .signals()
                .of(Message.CALL, 0);
        Emission emission = any.mode().emission();
        double weakDb = IntStream.rangeClosed(-100, 300)
                .mapToObj(it -> it / 10.0)
                .min(Comparator.comparing(it -> Math.abs(taken(call, emission, it) - 0.5)))
                .orElseThrow();
        double expected = taken(call, emission, weakDb);
        assertTrue(expected > 0.3 && expected < 0.7, mode + " at " + weakDb + " dB: " + expected);
        double error = Math.sqrt(expected * (1 - expected) / TRIALS);
        assertEquals(expected, observed(net(mode, weakDb)), 4 * error, mode + " at " + weakDb + " dB");
    }

    @Test
    void besideAWeakOneItIsTakenAndUnderAStrongOneNot() throws IOException, ScenarioProblems {
        assertEquals(1, observed(net("patient-climber", -20)), 4 * Math.sqrt(0.01 / TRIALS));
        assertEquals(0, observed(net("patient-climber", STRONG_DB + 30)), 4 * Math.sqrt(0.01 / TRIALS));
    }

    /** A call of one frame is taken if it is found and decoded. */
    private static double taken(Waveform call, Emission emission, double weakDb) {
        double density =
                Decibels.toRatio(-emission.crestFactorDb()) * Reception.NOISE_BANDWIDTH_HZ / emission.bandwidthHz();
        Reception heard = new SteadyReception(STRONG_DB - Decibels.ofRatio(1 + density * Decibels.toRatio(weakDb)));
        return call.detectionProbability(heard, 0) * call.decodingProbability(call.evidence(heard, 0, 0, 1));
    }

    /** The share of trials in which the gateway speaks to the stronger one before that calls anew. */
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

    private static NetScenario net(String mode, double weakDb) throws IOException, ScenarioProblems {
        String text = """
                title = "Two at once"
                seed = 3
                trials = 1
                horizon = "40 s"
                distance = "0 km"
                modes = ["%s"]
                audibility = "-40 dB"

                [gateway]
                name = "Desk"
                station = { hang = "0 ms", relay = "0 ms", recovery = "0 ms" }

                [[group]]
                name = "Strong"
                count = 1
                snr = "30 dB"
                gateway = { snr = "%s dB" }
                station = { hang = "0 ms", relay = "0 ms", recovery = "0 ms" }

                [[group.message]]
                name = "report"
                size = "500 B"
                at = ["0 s"]

                [[group]]
                name = "Weak"
                count = 1
                snr = "30 dB"
                gateway = { snr = "%s dB" }
                station = { hang = "0 ms", relay = "0 ms", recovery = "0 ms" }

                [[group.message]]
                name = "report"
                size = "500 B"
                at = ["0 s"]

                [operators]
                listens = "0 s"
                redial = "60 s"
                calls-in-a-row = 1

                [sky]
                condition = "flat"
                """.formatted(mode, STRONG_DB, weakDb);
        SourceFiles files = SourceFiles.of(
                Map.of("net.toml", text, "modes/" + mode + ".toml", Files.readString(MODES.resolve(mode + ".toml"))));
        return NetReader.read(files, Path.of("net.toml"), Map.of()).scenario();
    }
}
