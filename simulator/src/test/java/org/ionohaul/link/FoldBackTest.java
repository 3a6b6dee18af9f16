package org.ionohaul.link;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.channel.End;
import org.ionohaul.channel.NoiseBursts;
import org.ionohaul.channel.Reception;
import org.ionohaul.engine.Engine;
import org.ionohaul.waveform.SteadyReception;
import org.junit.jupiter.api.Test;

/** Transmitters that lower their power in long overs. Expected times are worked out by hand from the rules. */
final class FoldBackTest {
    private static final long SECOND = 1_000_000_000L;
    private static final FoldBack SMALL_SET = new FoldBack(20 * SECOND, 3, 40 * SECOND);

    /** Overs of 10 s, 5 s apart: each pause takes 5/40 of 20 s = 2.5 s of warmth off. */
    @Test
    void aTransmitterWarmsFromOverToOverUntilItsPausesDecide() {
        Transmitter transmitter = new Transmitter(SMALL_SET);
        List<Double> fullSeconds = new ArrayList<>();
        for (int over = 0; over < 6; over++) {
            fullSeconds.add(
                    1e-9 * key(transmitter, over * 15L * SECOND, 10 * SECOND).fullPowerNanos());
        }
        // Warm for 0, 7.5, 15 and then always 17.5 s of the 20 when the over begins.
        assertEquals(List.of(10.0, 10.0, 5.0, 2.5, 2.5, 2.5), fullSeconds);
    }

    @Test
    void aLongPauseCoolsItWholly() {
        Transmitter transmitter = new Transmitter(SMALL_SET);
        assertEquals(20 * SECOND, key(transmitter, 0, 60 * SECOND).fullPowerNanos());
        assertEquals(10 * SECOND, key(transmitter, 80 * SECOND, 60 * SECOND).fullPowerNanos());
        assertEquals(20 * SECOND, key(transmitter, 180 * SECOND, 60 * SECOND).fullPowerNanos());
    }

    @Test
    void itsMeanPowerIsThatOfBothParts() {
        Burst burst = key(new Transmitter(new FoldBack(20 * SECOND, 10, 0)), 0, 80 * SECOND);
        assertTrue(burst.isLowered());
        assertEquals(0.25 + 0.75 * 0.1, burst.meanPower(), 1e-12);
    }

    @Test
    void aTransmitterWithoutFoldBackKeepsItsPower() {
        Burst burst = key(new Transmitter(FoldBack.NEVER), 0, 3600 * SECOND);
        assertFalse(burst.isLowered());
        Reception full = new SteadyReception(7);
        assertEquals(full, LoweredReception.of(full, burst, 0));
    }

    /** 20 frames of 0.1 s at 10 dB, where 0 dB is needed; after 1 s the power falls by 20 dB. */
    @Test
    void theLateFramesOfALongOverAreLost() {
        assertEquals("11111111110000000000", decoded(new FoldBack(SECOND, 20, SECOND)));
        assertEquals("11111111111111111111", decoded(new FoldBack(SECOND, 3, SECOND)));
        assertEquals("11111111111111111111", decoded(FoldBack.NEVER));
    }

    private static String decoded(FoldBack foldBack) {
        Radio radio = new Radio(new StationTimes(0, 0, 0, 0), foldBack, 0);
        Reception steady = new SteadyReception(10);
        Ether ether = new PairEther(steady, steady, ChannelWatch.ALWAYS_CLEAR, SECOND / 100);
        StringBuilder fate = new StringBuilder();
        LinkParts parts = PlainLink.parts(radio, PlainLink.rules(ArqScheme.SELECTIVE_REPEAT, false));
        Link link = new Link(parts, new Medium(new Engine(), ether, 2), PairEther.NEAR, PairEther.FAR, new LinkTrace() {
            @Override
            public void onArrived(End at, Burst burst, boolean isHeard, long atNanos) {
                for (int frame = 0; frame < burst.frames(); frame++) {
                    fate.append(burst.isDecoded(frame) ? 1 : 0);
                }
            }
        });
        Station near = link.station(End.NEAR);
        near.outgoing().openOver(0, 1);
        for (int frame = 0; frame < 20; frame++) {
            near.outgoing().addFrame(10L * frame, 10L * frame + 10, 10L * frame);
        }
        near.sendPrepared(false, 0);
        link.engine().run();
        return fate.toString();
    }

    @Test
    void aLoweredSignalIsWeakerFromThenOnAndNothingElseIsOtherwise() {
        Burst burst = key(new Transmitter(new FoldBack(20 * SECOND, 10, 0)), 0, 80 * SECOND);
        Reception full = new Moving();
        Reception lowered = LoweredReception.of(full, burst, 5 * SECOND);
        double[] signal = new double[2];
        double[] disturbance = new double[2];
        for (long atSeconds : List.of(24L, 25L)) {
            double power = atSeconds < 25 ? 1 : 0.1;
            lowered.powers(atSeconds * SECOND, signal, disturbance);
            assertEquals(6 * power, signal[0], 1e-12);
            assertEquals(8 * power, signal[1], 1e-12);
            assertEquals(3, disturbance[1]);
            assertEquals(7 * power, lowered.meanSignal(atSeconds * SECOND), 1e-12);
        }
        assertEquals(2, lowered.subBands());
        assertEquals(11, lowered.steadyNanos());
        NoiseBursts bursts = new NoiseBursts();
        lowered.bursts(0, 1, bursts);
        assertEquals(12 * 0.5, bursts.meanPower());
        assertEquals(1.5, lowered.dopplerSpreadHz());
        assertEquals(0.25, lowered.shareBeyond(0.5, 2));
    }

    /** A reception of numbers that can be told apart. */
    private record Moving() implements Reception {
        @Override
        public int subBands() {
            return 2;
        }

        @Override
        public void powers(long atNanos, double[] signal, double[] disturbance) {
            signal[0] = 6;
            signal[1] = 8;
            disturbance[0] = 2;
            disturbance[1] = 3;
        }

        @Override
        public long steadyNanos() {
            return 11;
        }

        @Override
        public void bursts(long fromNanos, long toNanos, NoiseBursts bursts) {
            bursts.clear();
            bursts.add(12, 0.5, 1);
        }

        @Override
        public double meanSignal(long atNanos) {
            return 7;
        }

        @Override
        public double dopplerSpreadHz() {
            return 1.5;
        }

        @Override
        public double shareBeyond(double reachSeconds, double symbolSeconds) {
            return reachSeconds / symbolSeconds;
        }
    }

    private static Burst key(Transmitter transmitter, long atNanos, long durationNanos) {
        Burst burst = new Burst();
        burst.leave(atNanos, false, 0, 1);
        transmitter.key(burst, durationNanos);
        return burst;
    }
}
