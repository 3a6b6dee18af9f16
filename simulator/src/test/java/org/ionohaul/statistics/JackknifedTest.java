package org.ionohaul.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Leaving one block out after the other. */
final class JackknifedTest {
    private final double[] values =
            IntStream.rangeClosed(1, 25).asDoubleStream().toArray();

    /** Of a mean it is the standard error itself: the variance of 1 to 25 is 25 x 26 / 12. */
    @Test
    void ofAMeanItIsTheStandardError() {
        Jackknifed mean = Jackknifed.mean(values);
        assertEquals(13, mean.value());
        assertEquals(Math.sqrt(25 * 26 / 12.0 / 25), mean.standardError(), 1e-12);
    }

    /** t(0.975, 24) = 2.0639, a table value. */
    @Test
    void theIntervalIsStudentsAndCutToWhatIsPossible() {
        Estimate interval = Jackknifed.mean(values).within(0, 15, 0.95);
        assertEquals(13 - 2.0639 * 1.47196, interval.low(), 1e-3);
        assertEquals(15, interval.high());
    }

    /** The delta method for a square: 2 x 13 x 1.472, but for the bias of the second order. */
    @Test
    void numbersOfTheSameSampleCanBeCombined() {
        Jackknifed mean = Jackknifed.mean(values);
        assertEquals(2 * 13 * 1.47196, mean.times(mean).standardError(), 0.5);
        assertEquals(0, mean.minus(mean).standardError());
        assertEquals(2 * 1.47196, mean.plus(mean).standardError(), 1e-4);
        assertEquals(12, mean.minus(Jackknifed.constant(1)).value());
    }
}
