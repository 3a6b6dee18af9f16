package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.ionohaul.scenario.NetReader;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.SourceFiles;
import org.junit.jupiter.api.Test;

/**
 * Real sessions on one channel: each rule does what it is there for. Means over fifteen trials of the same messages and skies; what is
 * claimed differs by far more than their scatter, four standard errors of the paired difference at least.
 */
final class SharedChannelTest {
    private static final Path VALLEY = Path.of("../scenarios/nets/bridge-valley.toml");
    private static final int TRIALS = 15;

    private static List<NetTrial> run(String... changes) throws ScenarioProblems {
        Map<String, String> all = new HashMap<>(Map.of("horizon", "1 h", "load", "2"));
        for (int i = 0; i < changes.length; i += 2) {
            all.put(changes[i], changes[i + 1]);
        }
        NetScenario net = NetReader.read(SourceFiles.DISK, VALLEY, all).scenario();
        NetTrials trials = new NetTrials(net);
        return IntStream.range(0, TRIALS).mapToObj(trials::run).toList();
    }

    private static void assertMore(List<NetTrial> more, List<NetTrial> less, ToDoubleFunction<NetTrial> what) {
        double[] differences = IntStream.range(0, TRIALS)
                .mapToDouble(it -> what.applyAsDouble(more.get(it)) - what.applyAsDouble(less.get(it)))
                .toArray();
        double mean = IntStream.range(0, TRIALS)
                .mapToDouble(it -> differences[it])
                .average()
                .orElseThrow();
        double squares = IntStream.range(0, TRIALS)
                .mapToDouble(it -> (differences[it] - mean) * (differences[it] - mean))
                .sum();
        double error = Math.sqrt(squares / (TRIALS - 1) / TRIALS);
        assertTrue(mean > 4 * error, "more by " + mean + " with a standard error of " + error);
    }

    private static double through(NetTrial trial) {
        return trial.messages().stream().filter(NetTrial.Message::isDelivered).count();
    }

    private static double instructionsThrough(NetTrial trial) {
        return trial.messages().stream()
                .filter(it -> it.kind().isForStation() && it.isDelivered())
                .count();
    }

    @Test
    void whoCannotHearOthersCallsIntoThem() throws ScenarioProblems {
        List<NetTrial> hidden = run("audibility", "-30 dB", "operators.listens", "1 s");
        List<NetTrial> heard = run("audibility", "30 dB", "operators.listens", "1 s");
        assertMore(hidden, heard, NetTrial::collidedNanos);
    }

    @Test
    void whoDoesNotListenCallsABusyGateway() throws ScenarioProblems {
        List<NetTrial> deaf = run("operators.listens", "0 s");
        List<NetTrial> polite = run("audibility", "30 dB");
        assertMore(deaf, polite, NetTrial::toBusyGatewayNanos);
        assertMore(deaf, polite, NetTrial::refusals);
    }

    @Test
    void aSecondRadioServesMore() throws ScenarioProblems {
        List<NetTrial> one = run("load", "4");
        List<NetTrial> two = run(
                "load",
                "4",
                "gateway.channels",
                "2",
                "gateway.radio-each",
                "true",
                "operators.changes-channel",
                "true");
        assertMore(two, one, SharedChannelTest::through);
    }

    @Test
    void aGatewayThatCallsGetsItsMailThroughSooner() throws ScenarioProblems {
        assertMore(
                run("gateway.calls", "true", "horizon", "3 h"),
                run("horizon", "3 h"),
                SharedChannelTest::instructionsThrough);
    }

    @Test
    void aSessionLimitBreaksOffLongSessionsAndWhatIsHeldIsNotSentAgain() throws ScenarioProblems {
        List<NetTrial> limited = run("gateway.session-limit", "90 s", "group.1.message.3.rate", "1 /h");
        assertTrue(limited.stream().mapToInt(NetTrial::cutOff).sum() > TRIALS, "sessions were broken off");
        long pictures = limited.stream()
                .flatMap(it -> it.messages().stream())
                .filter(it -> it.bytes() > 8_000 && it.isDelivered() && it.calls() > 1)
                .count();
        assertTrue(pictures > TRIALS, "pictures came through in pieces: " + pictures);
    }

    /** The same trial twice, and after another one, is the same. */
    @Test
    void aTrialDependsOnItsNumberAlone() throws ScenarioProblems {
        NetTrials trials =
                new NetTrials(NetReader.read(SourceFiles.DISK, VALLEY, Map.of()).scenario());
        NetTrial third = trials.run(3);
        trials.run(5);
        assertEquals(third, trials.run(3));
    }
}
