package org.ionohaul.waveform;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.junit.jupiter.api.Test;

/** What leaks from a sub-band into others, against integrals by Commons Math. */
final class LeakageTest {
    /** The mean over both sub-bands of T sinc^2(f T), in units of a sub-band, of 1.5 lobes a sub-band; summed in 48 steps. */
    @Test
    void anInterfererIsHeardInOtherSubBandsAsTheTransformSays() {
        double[] densities = {2, 2, 2, 102, 2, 2};
        new Leakage(6, 300, 0.005).spread(densities, new double[6]);
        for (int band = 0; band < 6; band++) {
            assertEquals(2 + 100 * share(Math.abs(band - 3), 1.5), densities[band], 0.05, "sub-band " + band);
        }
    }

    private static double share(int distance, double lobes) {
        return new SimpsonIntegrator(1e-9, 1e-12, 6, 40)
                .integrate(
                        5_000_000,
                        v -> {
                            double x = Math.PI * lobes * (distance + v);
                            double sinc = Math.abs(x) < 1e-9 ? 1 : Math.sin(x) / x;
                            return lobes * (1 - Math.abs(v)) * sinc * sinc;
                        },
                        -1,
                        1);
    }

    @Test
    void anEvenBandStaysAsItIs() {
        double[] densities = {3, 3, 3};
        new Leakage(3, 300, 0.005).spread(densities, new double[3]);
        assertArrayEquals(new double[] {3, 3, 3}, densities);
    }
}
