package org.ionohaul.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/** Several tests at once. */
final class HolmCorrectionTest {
    /** By hand: 0.005 is below 0.05/4, 0.015 above that but below 0.05/3, 0.03 above 0.05/2; 0.04 would do alone and comes too late. */
    @Test
    void theSmallestAreTriedFirstEachWithFewerBesideIt() {
        assertArrayEquals(
                new boolean[] {true, false, false, true},
                HolmCorrection.rejects(new double[] {0.015, 0.04, 0.03, 0.005}, 0.05));
    }

    @Test
    void withoutTestsNothingIsRejected() {
        assertArrayEquals(new boolean[0], HolmCorrection.rejects(new double[0], 0.05));
    }

    /** Five independent tests of nothing: 1 - 0.99^5 = 4.9 % of 20,000 reject any; tolerance 4 standard errors, 0.6 points. */
    @Test
    void anyRejectsWronglyAsRarelyAsAccepted() {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(12L);
        long wrong = IntStream.range(0, 20_000)
                .mapToObj(i -> HolmCorrection.rejects(random.doubles(5).toArray(), 0.05))
                .filter(it -> IntStream.range(0, 5).anyMatch(i -> it[i]))
                .count();
        assertEquals(0.049, wrong / 20_000.0, 0.006);
    }

    @Test
    void anErrorRateThatIsNoneIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> HolmCorrection.rejects(new double[] {0.1}, 0));
        assertThrows(IllegalArgumentException.class, () -> HolmCorrection.rejects(new double[] {0.1}, Double.NaN));
    }
}
