package org.ionohaul.waveform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples of the formula of Polyanskiy, Poor and Verdu, computed independently. */
final class NormalApproximationTest {
    private static final double BSC_CAPACITY = 0.50008;
    private static final double BSC_DISPERSION = 0.89070;

    @ParameterizedTest(name = "binary symmetric channel 0.11, {0} uses, loss {1}: rate {2}")
    @CsvSource({"500, 1e-3, 0.3786", "1000, 1e-3, 0.4128", "2000, 1e-3, 0.4376", "1000, 1e-6, 0.3632"})
    void binarySymmetricChannel(int uses, double loss, double rate) {
        assertLoss(loss, rate, uses, BSC_CAPACITY, BSC_DISPERSION);
    }

    @ParameterizedTest(name = "real Gaussian channel at 0 dB, {0} uses, loss {1}: rate {2}")
    @CsvSource({"500, 1e-3, 0.3869", "1000, 1e-3, 0.4186"})
    void gaussianChannel(int uses, double loss, double rate) {
        assertLoss(loss, rate, uses, 0.5, 0.78051);
    }

    @Test
    void binaryInputGaussianChannel() {
        // Durisi's notes on finite-blocklength bounds state a rate "as large as 0.31" for 512 uses and 1e-8.
        assertLoss(1e-8, 0.3075, 512, 0.50015, 0.65979);
    }

    @Test
    void aShortFrameIsNotBelievedToBeNearlyPerfect() {
        assertEquals(1 - 1e-5, new NormalApproximation(128, 16).successProbability(0.50015, 0.65979));
    }

    @Test
    void nothingHeardIsNothingDecoded() {
        assertEquals(0, new NormalApproximation(1000, 500).successProbability(0, 0), 1e-12);
    }

    /** The rate is given to four digits: its bits to half a unit there, which bounds the loss. */
    private static void assertLoss(double loss, double rate, int uses, double capacity, double dispersion) {
        double bits = rate * uses;
        double tolerance = 0.05e-3 * uses + 0.5;
        int fewer = (int) Math.floor(bits - tolerance);
        int more = (int) Math.ceil(bits + tolerance);
        double low = 1 - new NormalApproximation(uses, fewer).successProbability(capacity, dispersion);
        double high = 1 - new NormalApproximation(uses, more).successProbability(capacity, dispersion);
        assertTrue(low < loss && loss < high, low + " < " + loss + " < " + high);
    }
}
