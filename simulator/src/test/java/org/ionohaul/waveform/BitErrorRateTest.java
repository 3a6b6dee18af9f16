package org.ionohaul.waveform;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.ionohaul.channel.Decibels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Bit error rates against independently computed values: 8-PSK by the exact phase integral, QAM by the exact Gray sum,
 * the others by the formulas of Proakis, Digital Communications.
 */
final class BitErrorRateTest {
    @ParameterizedTest(name = "at Eb/N0 {0} dB")
    @CsvSource({
        "0, 7.8650e-2, 1.8394e-1, 3.0327e-1, 1.2269e-1, 1.4098e-1, 1.9984e-1",
        "4, 1.2501e-2, 4.0558e-2, 1.4240e-1, 4.5895e-2, 5.8624e-2, 1.1852e-1",
        "6, 2.3883e-3, 9.3328e-3, 6.8311e-2, 2.0482e-2, 2.7871e-2, 8.3817e-2",
        "8, 1.9091e-4, 9.0940e-4, 2.1324e-2, 6.1811e-3, 9.2472e-3, 5.2334e-2",
        "10, 3.8721e-6, 2.2700e-5, 3.3690e-3, 1.0114e-3, 1.7542e-3, 2.6533e-2",
        "12, 9.0060e-9, 6.5443e-8, 1.8089e-4, 6.3379e-5, 1.3866e-4, 9.7240e-3"
    })
    void bitErrorRatesAreThoseOfTheTable(
            double ebN0Db, double bpsk, double dbpsk, double fsk2, double psk8, double qam16, double qam64) {
        assertRate(bpsk, Modulation.BPSK, ebN0Db);
        assertRate(bpsk, Modulation.QPSK, ebN0Db);
        assertRate(dbpsk, Modulation.DBPSK, ebN0Db);
        assertRate(fsk2, Modulation.FSK2, ebN0Db);
        assertRate(psk8, Modulation.PSK8, ebN0Db);
        assertRate(qam16, Modulation.QAM16, ebN0Db);
        assertRate(qam64, Modulation.QAM64, ebN0Db);
    }

    @ParameterizedTest(name = "{0} needs {1} dB for {2}")
    @CsvSource({
        "BPSK, 6.7895, 1e-3", "DBPSK, 7.9341, 1e-3", "FSK2, 10.9444, 1e-3",
        "BPSK, 9.5879, 1e-5", "DBPSK, 10.3422, 1e-5", "FSK2, 13.3525, 1e-5",
        "BPSK, 10.5298, 1e-6", "DBPSK, 11.1801, 1e-6", "FSK2, 14.1904, 1e-6",
        "QAM16, 13.435, 1e-5", "QAM64, 17.787, 1e-5"
    })
    void thresholdsAreThoseOfTheTable(Modulation modulation, double ebN0Db, double rate) {
        // A thousandth of a decibel moves these rates by up to 3 in 1000.
        assertEquals(rate, rate(modulation, ebN0Db), 3e-3 * rate);
    }

    @Test
    void coherentTonesNeedThreeDecibelsMoreThanOppositePhases() {
        assertEquals(BitErrorRate.of(Modulation.BPSK, 4), BitErrorRate.of(Modulation.FSK2_COHERENT, 8), 1e-15);
    }

    @Test
    void moreTonesNeedLessEnergyABit() {
        // Proakis, Digital Communications, figure of noncoherent orthogonal signals: 1e-5 at about 13.4, 10.7, 9.1, 8.1
        // dB for 2, 4, 8, 16 tones (read off the figure, from memory: a factor of 2 in rate is 0.3 dB).
        assertEquals(1e-5, rate(Modulation.FSK4, 10.6), 1e-5);
        assertEquals(1e-5, rate(Modulation.FSK8, 9.1), 1e-5);
        assertEquals(1e-5, rate(Modulation.FSK16, 8.1), 1e-5);
    }

    @Test
    void fourDifferentialPhasesLoseTwoPointThreeDecibelsToCoherentOnes() {
        // 10 log10 of 1 / (2 - sqrt 2) = 2.32 dB, the asymptotic loss (Proakis).
        double coherent = rate(Modulation.QPSK, 12);
        double differential = rate(Modulation.DQPSK, 12 + 2.32);
        assertEquals(0, Math.log10(differential / coherent), 0.3);
        assertEquals(0.5, BitErrorRate.of(Modulation.DQPSK, 0));
    }

    @ParameterizedTest
    @CsvSource({"BPSK", "QPSK", "PSK8", "QAM16", "QAM64", "DBPSK", "DQPSK", "FSK2_COHERENT", "FSK2", "FSK4", "FSK16"})
    void withoutSignalEveryBitIsAGuess(Modulation modulation) {
        assertEquals(0.5, BitErrorRate.of(modulation, 0), 1e-9);
    }

    private static void assertRate(double expected, Modulation modulation, double ebN0Db) {
        assertEquals(expected, rate(modulation, ebN0Db), 1e-4 * expected, modulation.name());
    }

    private static double rate(Modulation modulation, double ebN0Db) {
        return BitErrorRate.of(modulation, modulation.bitsPerSymbol() * Decibels.toRatio(ebN0Db));
    }
}
