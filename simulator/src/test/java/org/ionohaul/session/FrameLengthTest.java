package org.ionohaul.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ionohaul.channel.End;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The best frame length with independent bit errors: D payload bits and h overhead bits bring D / (D + h) (1 - b)^(D + h),
 * which is largest at D* = (-h L - sqrt(h^2 L^2 - 4 h L)) / (2 L), L = ln(1 - b).
 */
final class FrameLengthTest {
    private static final int OVERHEAD_BITS = 160;
    private static final int FRAMES = 100_000;

    @ParameterizedTest
    @CsvSource({"1e-5, 3920.79, 0.92237", "1e-4, 1187.41, 0.77016", "1e-3, 327.82, 0.41249"})
    void theBestLengthIsWhereTheFormulaPutsItAndBringsWhatItSays(double bitErrors, double best, double efficiency) {
        double log = Math.log1p(-bitErrors);
        double root = Math.sqrt(OVERHEAD_BITS * OVERHEAD_BITS * log * log - 4 * OVERHEAD_BITS * log);
        assertEquals(best, (-OVERHEAD_BITS * log - root) / (2 * log), 0.005);
        double atBest = efficiency(best, bitErrors);
        // The payload is rounded to whole bytes, which costs less than 1e-4 so near the top.
        assertEquals(efficiency, atBest, tolerance(efficiency) + 1e-4);
        assertTrue(efficiency(best / 2, bitErrors) < atBest - 0.005);
        assertTrue(efficiency(best * 2, bitErrors) < atBest - 0.005);
    }

    /** Frames get lost independently: the share that arrives has the standard error of a binomial share. */
    private static double tolerance(double efficiency) {
        return 4 * Math.sqrt(efficiency * (1 - efficiency) / FRAMES);
    }

    private static double efficiency(double payloadBits, double bitErrors) {
        int payloadBytes = (int) Math.round(payloadBits / 8);
        int bits = 8 * payloadBytes + OVERHEAD_BITS;
        Bench bench = new Bench();
        bench.window = 64;
        bench.shortOver = 64;
        bench.longOver = 64;
        bench.silencesToLost = 1000;
        bench.dataRates = List.of(
                PlainWaveform.losing(payloadBytes, 0, bits * Bench.MILLI, -Math.expm1(bits * Math.log1p(-bitErrors))));
        bench.cargo = Cargo.from(End.NEAR, List.of((long) payloadBytes * FRAMES));
        DataRateUse use = bench.run(0).dataRates().get(0);
        return 8.0 * payloadBytes * FRAMES * Bench.MILLI / use.airtimeNanos();
    }
}
