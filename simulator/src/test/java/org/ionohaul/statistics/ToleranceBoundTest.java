package org.ionohaul.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bounds that a share of the population keeps. */
final class ToleranceBoundTest {
    private static OrderedSample rising(int size) {
        return OrderedSample.of(IntStream.rangeClosed(1, size).asDoubleStream().toArray());
    }

    /** Wilks's well-known numbers for 95 % confidence (from memory; 1 - p^n >= 0.95 by hand). */
    @ParameterizedTest
    @CsvSource({"0.90, 29", "0.95, 59", "0.99, 299"})
    void soManyTrialsAreNeeded(double share, int trials) {
        ToleranceBound bound = new ToleranceBound(share, 0.95);
        assertEquals(trials, bound.fewestTrials());
        assertEquals(trials, bound.of(rising(trials)));
        assertThrows(IllegalArgumentException.class, () -> bound.of(rising(trials - 1)));
    }

    /** The same table for 95 % of the population: the second largest of 93, the third largest of 124 (from memory). */
    @ParameterizedTest
    @CsvSource({"92, 92", "93, 92", "123, 122", "124, 122"})
    void moreTrialsLeaveTheWorstOut(int size, double bound) {
        assertEquals(bound, new ToleranceBound(0.95, 0.95).of(rising(size)));
    }

    @Test
    void whatNeverCameMakesTheBoundInfinite() {
        double[] values = IntStream.range(0, 100)
                .mapToDouble(i -> i < 5 ? Double.POSITIVE_INFINITY : i)
                .toArray();
        assertEquals(Double.POSITIVE_INFINITY, new ToleranceBound(0.95, 0.95).of(OrderedSample.of(values)));
    }

    /** 20,000 samples of 200 uniform numbers: P(Bin(200, 0.95) up to 195) = 0.97355 (scipy); 4 standard errors are 0.45 points. */
    @Test
    void itHoldsAsOftenAsItSays() {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(13L);
        ToleranceBound bound = new ToleranceBound(0.95, 0.95);
        double held = IntStream.range(0, 20_000)
                        .filter(i ->
                                bound.of(OrderedSample.of(random.doubles(200).toArray())) >= 0.95)
                        .count()
                / 20_000.0;
        assertEquals(0.97355, held, 0.0045);
    }

    @Test
    void sharesThatAreNoneAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new ToleranceBound(1, 0.95));
        assertThrows(IllegalArgumentException.class, () -> new ToleranceBound(0.9, Double.NaN));
    }
}
