package org.ionohaul.waveform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ionohaul.channel.Decibels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

final class CodedInformationTest {
    /** Constrained capacity of coded modulation, computed independently by quadrature. */
    @ParameterizedTest(name = "{0} carries {1} bit at {2} dB")
    @CsvSource({
        "QPSK, 1.00, 0.187",
        "QPSK, 1.50, 3.387",
        "PSK8, 1.50, 3.028",
        "PSK8, 2.00, 5.761",
        "PSK8, 2.25, 7.187",
        "QAM16, 2.00, 5.118",
        "QAM16, 3.00, 9.304",
        "QAM64, 3.00, 9.006",
        "QAM64, 4.50, 14.365"
    })
    void capacityTable(Modulation modulation, double bits, double esN0Db) {
        assertEquals(
                esN0Db, Decibels.ofRatio(CodedInformation.of(modulation).bits().inverse(bits)), 1e-3);
    }

    @ParameterizedTest(name = "{0} at 10 dB: {1} bit")
    @CsvSource({"QPSK, 1.9935", "PSK8, 2.6774", "QAM16, 3.1639", "QAM64, 3.2686"})
    void capacityAtTenDecibels(Modulation modulation, double bits) {
        assertEquals(bits, CodedInformation.of(modulation).bits().at(10), 1e-4);
    }

    @ParameterizedTest(name = "BPSK at {0} dB: {1} bit")
    @CsvSource({"-10, 0.13142", "-5, 0.34951", "0, 0.72145", "5, 0.97618"})
    void capacityOfTwoPhases(double esN0Db, double bits) {
        assertEquals(bits, CodedInformation.of(Modulation.BPSK).bits().at(Decibels.toRatio(esN0Db)), 1e-5);
    }

    /** Limits of the binary-input Gaussian channel; 0.187 dB at rate one half is the well-known one. */
    @ParameterizedTest(name = "rate {0} needs Es/N0 {1} dB")
    @CsvSource({
        "0.0625, -13.4430",
        "0.125, -10.2378",
        "0.25, -6.8147",
        "0.33333333, -5.2666",
        "0.5, -2.8232",
        "0.66666667, -0.7014",
        "0.75, 0.3770",
        "0.83333333, 1.5706",
        "0.875, 2.2646"
    })
    void limitsOfTheBinaryInputChannel(double rate, double esN0Db) {
        assertEquals(
                esN0Db,
                Decibels.ofRatio(CodedInformation.of(Modulation.BPSK).bits().inverse(rate)),
                1e-3);
    }

    /**
     * Weak signals, coherent: log2(1 + Es/N0) in the first two orders for everything that uses both dimensions alike (Verdu,
     * "Spectral efficiency in the wideband regime", IEEE Trans. Inf. Theory 48(6), 2002; from memory). Two phases use one
     * dimension: log2(1 + 2 Es/N0) / 2. What is left is of third order: less than (Es/N0)^2, relative.
     */
    @ParameterizedTest
    @EnumSource(
            value = Modulation.class,
            names = {"BPSK", "QPSK", "PSK8", "QAM16", "QAM32", "QAM64"})
    void weakSignalsCarryWhatTheGaussianChannelDoes(Modulation modulation) {
        for (double db = -27; db <= -12; db += 1.5) {
            double esN0 = Decibels.toRatio(db);
            double limit = modulation == Modulation.BPSK ? Math.log1p(2 * esN0) / 2 : Math.log1p(esN0);
            double bits = CodedInformation.of(modulation).bits().at(esN0);
            assertEquals(1, bits * Math.log(2) / limit, 4 * esN0 * esN0 + 1e-3, modulation + " at " + db + " dB");
        }
    }

    /**
     * Weak tones told by their energy: half the chi-square distance of each tone's density from their mixture (Cover and
     * Thomas, Elements of Information Theory, on relative entropy as half of chi-square; from memory). With the
     * likelihood ratio exp(-g) I0(2 sqrt(g) r), whose square has the mean I0(2 g), that is (I0(2 g) - 1) (M - 1) / (2 M) nats.
     * A pair of symbols told by the change of phase: the same of their M likelihoods, each two overlapping in
     * g |1 + exp(j change)|, which makes g^2 for two as for four phases. What is left is of the order of g, relative: within 2 g.
     */
    @ParameterizedTest
    @CsvSource({"FSK2, 2", "FSK4, 4", "FSK8, 8", "FSK16, 16", "DBPSK, 0", "DQPSK, 0"})
    void weakSignalsWithoutAPhaseCarryTheSquareOfTheirStrength(Modulation modulation, int tones) {
        for (double db = -24; db <= -15; db += 1) {
            double g = Decibels.toRatio(db);
            double nats = tones > 0 ? g * g * (tones - 1) / (2 * tones) : g * g;
            double bits = CodedInformation.of(modulation).bits().at(g);
            assertEquals(1, bits * Math.log(2) / nats, 2 * g + 5e-3, modulation + " at " + db + " dB");
        }
    }

    /** The variance of the information density of a weak signal is twice its mean, in nats: it is nearly Gaussian (worked out from the same expansion). */
    @ParameterizedTest
    @EnumSource(Modulation.class)
    void theDispersionOfWeakSignalsIsTwiceTheirInformation(Modulation modulation) {
        InformationDensity density = CodedInformation.of(modulation);
        for (double db = -22; db <= -17; db += 1) {
            double esN0 = Decibels.toRatio(db);
            double ratio =
                    density.dispersion().at(esN0) * Math.log(2) / density.bits().at(esN0);
            assertEquals(2, ratio, 4 * esN0 + 0.01, modulation + " at " + db + " dB");
        }
    }

    @Test
    void energyABitNeverFallsBelowTheShannonLimit() {
        // ln 2 = -1.592 dB is reached as the rate goes to zero.
        double esN0 = Decibels.toRatio(-25);
        assertEquals(
                Math.log(2), esN0 / CodedInformation.of(Modulation.BPSK).bits().at(esN0), 5e-3);
    }

    @Test
    void noncoherentTonesAreBestNearHalfRate() {
        // Stark, "Capacity and cutoff rate of noncoherent FSK with nonselective Rician fading", IEEE Trans. Commun.
        // 33(11), 1985: binary tones in white noise need 6.72 dB at rate 0.48 (from memory).
        double esN0 = CodedInformation.of(Modulation.FSK2).bits().inverse(0.48);
        assertEquals(6.72, Decibels.ofRatio(esN0 / 0.48), 0.02);
    }

    @Test
    void momentsOfFourNoncoherentTonesAgreeWithRandomNumbers() {
        // 400 000 draws with NumPy's default_rng(1) at 6 dB: mean 1.4236, standard error 0.0018, variance 1.2588.
        InformationDensity density = CodedInformation.of(Modulation.FSK4);
        double esN0 = Decibels.toRatio(6);
        assertEquals(1.4236, density.bits().at(esN0), 4 * 0.0018);
        assertEquals(1.2588, density.dispersion().at(esN0), 0.02);
    }

    @Test
    void momentsOfSixteenNoncoherentTonesAgreeWithRandomNumbers() {
        // As above, 16 tones at 6 dB: mean 2.4405, standard error 0.0030, variance 3.6320.
        InformationDensity density = CodedInformation.of(Modulation.FSK16);
        double esN0 = Decibels.toRatio(6);
        assertEquals(2.4405, density.bits().at(esN0), 4 * 0.0030);
        assertEquals(3.6320, density.dispersion().at(esN0), 0.05);
    }

    @Test
    void dispersionOfTheBinaryInputChannel() {
        // Independently computed at a real SNR of 0.189 dB (Es/N0 half of that): C = 0.50015, V = 0.65979; the capacity
        // is that of Durisi's notes on finite-blocklength bounds, fig. 3.2.
        InformationDensity density = CodedInformation.of(Modulation.BPSK);
        double esN0 = Decibels.toRatio(0.189) / 2;
        assertEquals(0.50015, density.bits().at(esN0), 1e-5);
        assertEquals(0.65979, density.dispersion().at(esN0), 1e-4);
    }

    @Test
    void thirtyTwoPointsLieBetweenTheirNeighbours() {
        for (double db = -10; db <= 25; db += 2.5) {
            double bits = CodedInformation.of(Modulation.QAM32).bits().at(Decibels.toRatio(db));
            assertTrue(bits <= Math.log(1 + Decibels.toRatio(db)) / Math.log(2), "below Shannon at " + db);
            assertTrue(
                    bits >= CodedInformation.of(Modulation.QAM16).bits().at(Decibels.toRatio(db)) - 0.01,
                    "above 16 points at " + db);
        }
    }

    @ParameterizedTest
    @EnumSource(Modulation.class)
    void informationRisesFromNothingToAllBits(Modulation modulation) {
        RatioTable bits = CodedInformation.of(modulation).bits();
        double before = 0;
        for (double db = -50; db <= 60; db += 0.25) {
            double now = bits.at(Decibels.toRatio(db));
            assertTrue(now >= before, modulation + " falls at " + db + " dB");
            before = now;
        }
        assertEquals(0, bits.at(0));
        assertEquals(modulation.bitsPerSymbol(), before, 1e-6);
    }
}
