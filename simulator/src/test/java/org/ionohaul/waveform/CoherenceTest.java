package org.ionohaul.waveform;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is left of a gain that changes, against its integral by Commons Math. */
final class CoherenceTest {
    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.0299, 0.03, 0.5, 2, 9})
    void aGainThatChangesAddsUpToLess(double u) {
        double integral = new SimpsonIntegrator(1e-11, 1e-13, 6, 40)
                .integrate(5_000_000, x -> 2 * (1 - x) * Math.exp(-u * u * x * x / 2), 0, 1);
        assertEquals(integral, Coherence.power(u), 1e-8);
    }
}
