package org.ionohaul.net;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.Reception;
import org.ionohaul.net.DisturbedReception.Disturber;
import org.ionohaul.waveform.SteadyReception;
import org.junit.jupiter.api.Test;

/** What is heard of a burst is disturbed by the power of others, for as long as they last. */
final class NetEtherTest {
    private static final long SECOND = 1_000_000_000L;

    @Test
    void anotherStationsPowerIsAddedToTheNoiseWhileItIsOnTheAir() {
        SteadyReception alone = new SteadyReception(20);
        DisturbedReception disturbed = new DisturbedReception(
                alone,
                List.of(Disturber.steady(SECOND, 2 * SECOND, 9), Disturber.fading(0, SECOND, new SteadyReception(10))),
                2);
        assertEquals(1 + 2 * 10, disturbanceAt(disturbed, 0), 1e-9);
        assertEquals(1 + 2 * 9, disturbanceAt(disturbed, SECOND), 1e-9, "the one ends as the other begins");
        assertEquals(1, disturbanceAt(disturbed, 2 * SECOND), 1e-9);
        assertTrue(disturbed.steadyNanos() < SECOND / 4, "others come and go on a path that doesn't fade");
    }

    private static double disturbanceAt(Reception reception, long atNanos) {
        double[] disturbance = new double[1];
        reception.powers(atNanos, new double[1], disturbance);
        return disturbance[0];
    }

    /** Station 1 hears 2 but not 3. */
    @Test
    void whoIsBelowTheNoiseIsHidden() {
        NetEther ether = new NetEther(new Levels(Map.of("2>1", 20.0, "3>1", 3.0)), Decibels.toRatio(6), 1);
        assertTrue(ether.isAudible(2, 1, 0));
        assertFalse(ether.isAudible(3, 1, 0));
        assertFalse(ether.isAudible(1, 1, 0), "nobody is busy for itself");
    }

    /** Levels in dB by name, such as "2>1"; all others are 0 dB. */
    private record Levels(Map<String, Double> db, Reception heard) implements Audibility {
        Levels(Map<String, Double> db) {
            this(db, new SteadyReception(0));
        }

        @Override
        public int stations() {
            return 4;
        }

        @Override
        public Reception reception(int from, int at) {
            return heard;
        }

        @Override
        public double meanSignal(int from, int at, long atNanos) {
            return Decibels.toRatio(db.getOrDefault(from + ">" + at, 0.0));
        }

        @Override
        public long propagationNanos(int from, int at) {
            return 0;
        }

        @Override
        public boolean isOccupiedByOthers(int at, long fromNanos, long untilNanos) {
            return false;
        }
    }
}
