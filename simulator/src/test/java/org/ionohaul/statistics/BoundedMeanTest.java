package org.ionohaul.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/** Means of what lies from 0 to 1. */
final class BoundedMeanTest {
    private static final int REPEATS = 4000;

    @Test
    void ofNoughtsAndOnesItIsTheExactIntervalOfAShare() {
        Estimate mean = BoundedMean.of(List.of(1.0, 0.0, 1.0, 1.0, 0.0, 1.0, 1.0), 0.95);
        Estimate share = new Proportion(5, 7).exact(0.95);
        assertEquals(share.value(), mean.value(), 1e-12);
        assertEquals(share.low(), mean.low(), 1e-9);
        assertEquals(share.high(), mean.high(), 1e-9);
        assertEquals(0, BoundedMean.of(List.of(0.0, 0.0), 0.95).low());
        assertEquals(1, BoundedMean.of(List.of(1.0, 1.0), 0.95).high());
        // Clopper and Pearson with no hit: 1 - (0.05 / 2)^(1 / n).
        assertEquals(
                1 - Math.pow(0.025, 0.5),
                BoundedMean.of(List.of(0.0, 0.0), 0.95).high(),
                1e-9);
    }

    @Test
    void itCoversTheMeanAtLeastAsOftenAsItSaysWhateverTheValues() {
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(1_928L);
        DoubleSupplier uniform = random::nextDouble;
        for (int count : new int[] {2, 5, 12, 40}) {
            assertCovers(count, 0.8, () -> uniform.getAsDouble() < 0.8 ? 1 : 0);
            // Two ranges of one sky that hold or fail each by itself, and mostly together.
            assertCovers(
                    count,
                    0.8,
                    () -> ((uniform.getAsDouble() < 0.8 ? 1 : 0) + (uniform.getAsDouble() < 0.8 ? 1 : 0)) / 2.0);
            assertCovers(count, 0.8, () -> {
                double first = uniform.getAsDouble() < 0.8 ? 1 : 0;
                return uniform.getAsDouble() < 0.7 ? first : (first + (uniform.getAsDouble() < 0.8 ? 1 : 0)) / 2;
            });
            // Brier scores of somebody who says 90 % and is right: 0.01 nine times of ten, else 0.81.
            assertCovers(count, 0.09, () -> uniform.getAsDouble() < 0.9 ? 0.01 : 0.81);
            // Of somebody who says 70 %.
            assertCovers(count, 0.21, () -> uniform.getAsDouble() < 0.7 ? 0.09 : 0.49);
            assertCovers(count, 0.5, uniform);
        }
    }

    private static void assertCovers(int count, double truth, DoubleSupplier value) {
        long held = IntStream.range(0, REPEATS)
                .mapToObj(it -> BoundedMean.of(
                        DoubleStream.generate(value).limit(count).boxed().toList(), 0.95))
                .filter(it -> it.low() <= truth && truth <= it.high())
                .count();
        double fourErrors = 4 * Math.sqrt(0.95 * 0.05 / REPEATS);
        assertTrue((double) held / REPEATS >= 0.95 - fourErrors, count + " values of mean " + truth + ": " + held);
    }

    @Test
    void otherValuesAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> BoundedMean.of(List.of(), 0.95));
        assertThrows(IllegalArgumentException.class, () -> BoundedMean.of(List.of(0.5, 1.1), 0.95));
        assertThrows(IllegalArgumentException.class, () -> BoundedMean.of(List.of(Double.NaN), 0.95));
    }
}
