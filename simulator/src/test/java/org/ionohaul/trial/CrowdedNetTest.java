package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.ionohaul.scenario.NetReader;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.SourceFiles;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever the rules, a crowded net runs to its end, and what it says of its messages is possible. */
final class CrowdedNetTest {
    private static final Path VALLEY = Path.of("../scenarios/nets/bridge-valley.toml");

    @ParameterizedTest
    @CsvSource({
        "patient-climber, free, true, 60 s, 10 s, 1, false, 0 s",
        "patient-climber, roster, true, 5 min, 30 s, 2, false, 3 s",
        "patient-climber, in-turn, false, 60 s, 10 s, 2, true, 3 s",
        "brisk-comb, free, true, 2 min, 20 s, 3, true, 0 s",
        "slow-whistle, free, false, 10 min, 60 s, 1, false, 1 s",
        "steady-wagon, in-turn, true, 3 min, 30 s, 1, false, 3 s",
        "ax25-go-back-n, free, true, 5 min, 60 s, 2, false, 3 s",
        "m625-arq, roster, true, 5 min, 60 s, 2, true, 0 s"
    })
    void aCrowdedNetRunsToItsEnd(
            String mode,
            String access,
            String calls,
            String limit,
            String idle,
            String channels,
            String radioEach,
            String listens)
            throws ScenarioProblems {
        Map<String, String> changes = new HashMap<>(Map.of(
                "modes", "[\"" + mode + "\"]",
                "discipline.access", access,
                "discipline.order", "short-first",
                "gateway.calls", calls,
                "gateway.session-limit", limit,
                "gateway.idle-limit", idle,
                "gateway.channels", channels,
                "gateway.radio-each", radioEach,
                "operators.listens", listens,
                "operators.changes-channel", "true"));
        changes.putAll(Map.of("group.1.count", "25", "load", "4", "horizon", "45 min", "operators.patience", "20 min"));
        NetTrials trials =
                new NetTrials(NetReader.read(SourceFiles.DISK, VALLEY, changes).scenario());
        for (int trial = 0; trial < 20; trial++) {
            NetTrial result = trials.run(trial);
            assertTrue(result.messages().size() > 50);
            long most = 45L * 60_000_000_000L * Integer.parseInt(channels);
            assertTrue(result.collidedNanos() <= result.occupiedNanos() && result.occupiedNanos() <= most);
            for (NetTrial.Message message : result.messages()) {
                assertTrue(message.deliveredNanos() > message.writtenNanos(), message::toString);
                assertTrue(!message.isDelivered() || message.begunNanos() >= message.writtenNanos(), message::toString);
                assertTrue(
                        !message.isDelivered() || message.begunNanos() <= message.deliveredNanos(), message::toString);
                assertEquals(message.calls() == 0 ? NetTrial.NEVER : message.begunNanos(), message.begunNanos());
            }
        }
    }
}
