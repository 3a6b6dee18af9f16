package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Map;
import org.ionohaul.net.Net;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.NetScenario;
import org.junit.jupiter.api.Test;

/** Skies and levels of a net are worked out for who asks, once. */
final class NetSkiesTest {
    private static final int SILENT = 40;

    /** Stations of group One write after the trial has ended. */
    private static NetSkies skies(NetScenario net) {
        return new NetSkies(
                net, new TrialStreams(net.seed(), 0), net.mode().emission().passband());
    }

    private static NetScenario net() {
        return new QuietNet(
                        "patient-climber",
                        Map.of(
                                "group.1.count",
                                String.valueOf(SILENT),
                                "group.1.message.1.at",
                                "[\"19 min\"]",
                                "horizon",
                                "15 min",
                                "operators.listens",
                                "3 s",
                                "audibility",
                                "8 dB ± 10 dB"))
                .scenario();
    }

    @Test
    void onlyWhoListensHasASky() {
        NetTrials trials = new NetTrials(net());
        NetSkies skies = skies(net());
        NetTrial trial = trials.run(0, false, skies);
        assertEquals(
                1,
                trial.messages().stream().filter(NetTrial.Message::isDelivered).count());
        assertEquals(1, skies.made());
    }

    @Test
    void levelsBetweenStationsHoldForTheTrialBothWays() {
        NetSkies skies = skies(net());
        NetSkies again = skies(net());
        double first = skies.meanSignal(3, 7, 0);
        again.meanSignal(1, 2, 0);
        assertEquals(first, skies.meanSignal(7, 3, 600_000_000_000L));
        assertEquals(first, again.meanSignal(7, 3, 0), "whoever asks first");
        assertNotEquals(first, skies.meanSignal(3, 8, 0));
        assertEquals(0, skies.made(), "no sky lies between two stations");
        skies.meanSignal(Net.GATEWAY, 3, 0);
        skies.meanSignal(3, Net.GATEWAY, 0);
        assertEquals(1, skies.made());
    }
}
