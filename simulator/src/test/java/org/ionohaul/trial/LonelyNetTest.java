package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.ionohaul.channel.End;
import org.ionohaul.link.Burst;
import org.ionohaul.net.AirSpan;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.SessionResult;
import org.ionohaul.session.SessionTrace;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A net of one station is the pair that it is: every burst leaves and ends at the same nanosecond as in a session alone. */
final class LonelyNetTest {
    private static final long BYTES = 9_000;
    private static final double HORIZON_SECONDS = 3600;
    private static final int TRIALS = 8;

    @ParameterizedTest
    @ValueSource(strings = {"patient-climber", "brisk-comb", "slow-whistle", "steady-wagon"})
    void aNetOfOneStationIsASessionAlone(String mode) {
        NetScenario net = net(mode);
        Scenario pair = net.groups().get(0).pair();
        Transfer transfer =
                new Transfer("one", List.of(new PayloadFile("it", BYTES)), List.of(Direction.UPLOAD), List.of());
        Trials alone = new Trials(pair.sending(List.of(transfer), HORIZON_SECONDS));
        NetTrials shared = new NetTrials(net);
        int delivered = 0;
        int bursts = 0;
        for (long trial = 0; trial < TRIALS; trial++) {
            BurstTimes watch = new BurstTimes();
            SessionResult expected =
                    alone.run(transfer, Direction.UPLOAD, pair.modes().get(0), trial, watch);
            NetTrial observed = shared.run(trial, true);
            List<AirSpan> first = observed.spans()
                    .subList(0, Math.min(watch.spans.size(), observed.spans().size()));
            assertEquals(watch.spans, first, mode + " trial " + trial);
            NetTrial.Message message = observed.messages().get(0);
            OptionalLong seen =
                    message.isDelivered() ? OptionalLong.of(message.deliveredNanos()) : OptionalLong.empty();
            if (expected.deliveredNanos().isPresent()) {
                assertEquals(expected.deliveredNanos(), seen);
                assertEquals(watch.spans.size(), observed.spans().size(), "nothing is sent after it is through");
                delivered++;
            }
            bursts += watch.spans.size();
        }
        assertTrue(delivered >= TRIALS / 2 && bursts > 10 * TRIALS, mode + ": " + delivered + ", " + bursts);
    }

    private static final class BurstTimes implements SessionTrace {
        private final List<AirSpan> spans = new ArrayList<>();

        @Override
        public void onSent(End from, Burst burst, long durationNanos) {
            int sender = from == End.NEAR ? 1 : 0;
            spans.add(
                    new AirSpan(0, sender, 1 - sender, burst.startNanos(), burst.startNanos() + durationNanos, false));
        }
    }

    private static NetScenario net(String mode) {
        String text = """
                title = "One station, one gateway"
                seed = 5
                trials = 8
                horizon = "1 h"
                distance = "560 km"
                modes = ["%s"]

                [gateway]
                name = "Desk"
                noise-schedule = [{ at = "4 min", rise = "0 dB" }, { at = "10 min", rise = "3 dB" }]
                impulses = { share = "1 %%", rise = "14 dB", slot = "10 ms" }
                station = { hang = "12 ms", relay = "9 ms", recovery = "18 ms" }

                [[gateway.interference]]
                visits = "4 /h"
                visit = "2 min"
                over = "14 s"
                pause = "9 s"
                median = "9 dB"
                deviation = "7 dB"
                band-share = "60 %%"

                [[group]]
                name = "Hut"
                count = 1
                snr = "19 dB"
                gateway = { snr = "17 dB" }
                station = { hang = "20 ms", relay = "14 ms", recovery = "30 ms" }

                [[group.message]]
                name = "report"
                size = "%d B"
                at = ["0 s"]

                [operators]
                listens = "0 s"

                [sky]
                condition = "mid-latitude moderate"
                slow-variation = { deviation = "2.5 dB", time-constant = "45 s" }
                """.formatted(mode, BYTES);
        return QuietNet.read(text, mode, Map.of());
    }
}
