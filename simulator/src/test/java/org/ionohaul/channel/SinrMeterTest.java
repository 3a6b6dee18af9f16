package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A meter held to a reception whose powers are known. */
final class SinrMeterTest {
    /** Two sub-bands: signal 4 and 12, noise 1 and 3 from the trial's beginning on, each a nanosecond more a nanosecond. */
    private static final class Growing implements Reception {
        private final List<Long> heardAtNanos = new ArrayList<>();
        private final List<Long> burstsOfNanos = new ArrayList<>();

        @Override
        public int subBands() {
            return 2;
        }

        @Override
        public void powers(long atNanos, double[] signal, double[] disturbance) {
            heardAtNanos.add(atNanos);
            signal[0] = 4 + (double) atNanos;
            signal[1] = 12;
            disturbance[0] = 1;
            disturbance[1] = 3 + (double) atNanos;
        }

        @Override
        public void bursts(long fromNanos, long toNanos, NoiseBursts bursts) {
            burstsOfNanos.add(toNanos - fromNanos);
            bursts.clear();
            bursts.add(8, 0.25, 1e-3);
        }

        @Override
        public long steadyNanos() {
            return 1;
        }

        @Override
        public double meanSignal(long atNanos) {
            return 8;
        }

        @Override
        public double dopplerSpreadHz() {
            return 0;
        }

        @Override
        public double shareBeyond(double reachSeconds, double symbolSeconds) {
            return 0;
        }
    }

    @Test
    void anInstantIsHeardBandByBand() {
        SinrMeter meter = new SinrMeter();
        assertEquals(0, meter.subBands());
        meter.listen(new Growing(), 6);
        assertEquals(2, meter.subBands());
        assertEquals(10.0 / (1 + 2), meter.sinr(0));
        assertEquals(12.0 / (9 + 2), meter.sinr(1));
    }

    /** Instants 115 and 125 in the middle of both halves of the 20 from 110 on; bursts, 2 in the mean, at both. */
    @Test
    void aStretchIsTheRatioOfMeans() {
        Growing reception = new Growing();
        double signals = (4 + 115) + 12 + (4 + 125) + 12;
        double disturbances = 1 + (3 + 115) + 1 + (3 + 125) + 4 * 2;
        assertEquals(signals / disturbances, new SinrMeter().mean(reception, 110, 20, 2), 1e-12);
        assertEquals(List.of(115L, 125L), reception.heardAtNanos);
        assertEquals(List.of(20L), reception.burstsOfNanos);
    }

    @Test
    void aStretchOfNoLengthIsAnInstant() {
        Growing reception = new Growing();
        assertEquals((10.0 + 12) / (1 + 9 + 2 * 2), new SinrMeter().mean(reception, 6, 0, 1), 1e-12);
        assertEquals(List.of(1L), reception.burstsOfNanos);
    }
}
