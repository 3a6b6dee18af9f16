package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** A reception that alters nothing hands on all that it is asked. */
final class DerivedReceptionTest {
    private static final Reception ORIGINAL = new Reception() {
        @Override
        public int subBands() {
            return 1;
        }

        @Override
        public void powers(long atNanos, double[] signal, double[] disturbance) {
            signal[0] = 2 + (double) atNanos;
            disturbance[0] = 3 + (double) atNanos;
        }

        @Override
        public long steadyNanos() {
            return 4;
        }

        @Override
        public double meanSignal(long atNanos) {
            return 5 + (double) atNanos;
        }

        @Override
        public void bursts(long fromNanos, long toNanos, NoiseBursts bursts) {
            bursts.add(6, (toNanos - fromNanos) / 10.0, 7);
        }

        @Override
        public double frequencyErrorHz(long atNanos) {
            return 8 + (double) atNanos;
        }

        @Override
        public double dopplerSpreadHz() {
            return 9;
        }

        @Override
        public double shareBeyond(double reachSeconds, double symbolSeconds) {
            return reachSeconds - symbolSeconds;
        }
    };

    @Test
    void whatIsNotAlteredIsTheOriginals() {
        DerivedReception same = () -> ORIGINAL;
        double[] signal = new double[1];
        double[] disturbance = new double[1];
        same.powers(10, signal, disturbance);
        assertArrayEquals(new double[] {12, 13}, new double[] {signal[0], disturbance[0]});
        NoiseBursts bursts = new NoiseBursts();
        same.bursts(100, 105, bursts);
        assertArrayEquals(new double[] {6, 0.5, 7}, new double[] {bursts.power(0), bursts.share(0), bursts.seconds(0)});
        assertEquals(1, same.subBands());
        assertEquals(4, same.steadyNanos());
        assertEquals(15, same.meanSignal(10));
        assertEquals(18, same.frequencyErrorHz(10));
        assertEquals(9, same.dopplerSpreadHz());
        assertEquals(0.5, same.shareBeyond(0.75, 0.25));
    }
}
