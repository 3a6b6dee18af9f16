package org.ionohaul.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Quantiles of samples in which some observations never happened. */
final class OrderedSampleTest {
    private static final double NEVER = Double.POSITIVE_INFINITY;

    /** By hand from the definition: the smallest value that at least n p observations do not exceed. */
    @Test
    void quantileIsTheSmallestValueThatEnoughObservationsDoNotExceed() {
        OrderedSample sample = OrderedSample.of(new double[] {40, 10, 30, 20});
        assertEquals(10, sample.quantile(0.25));
        assertEquals(20, sample.quantile(0.26));
        assertEquals(20, sample.quantile(0.5));
        assertEquals(40, sample.quantile(0.9));
    }

    @Test
    void aQuantileAmongThoseThatNeverHappenedIsNotReached() {
        OrderedSample sample = OrderedSample.of(new double[] {5, NEVER, 7, NEVER, 6});
        assertEquals(7, sample.quantile(0.6));
        assertEquals(NEVER, sample.quantile(0.61));
    }

    @Test
    void anIntervalMayReachBeyondWhatHappened() {
        double[] values = IntStream.rangeClosed(1, 20)
                .mapToDouble(i -> i <= 13 ? i : NEVER)
                .toArray();
        // Ranks 6 and 15, the table value for the median of 20.
        assertEquals(new Estimate(10, 6, NEVER), OrderedSample.of(values).quantile(0.5, 0.95));
    }

    @Test
    void countsThoseThatKeptALimitInclusively() {
        OrderedSample sample = OrderedSample.of(new double[] {5, NEVER, 7, 7, 6});
        assertEquals(new Proportion(4, 5), sample.atMost(7));
        assertEquals(new Proportion(0, 5), sample.atMost(4.9));
        assertEquals(new Proportion(4, 5), sample.atMost(Double.MAX_VALUE));
    }

    @Test
    void emptyAndMeaninglessSamplesAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> OrderedSample.of(new double[0]));
        assertThrows(IllegalArgumentException.class, () -> OrderedSample.of(new double[] {1, Double.NaN, 2}));
    }

    /** The true quantile of the exponential distribution is -ln(1 - p); 2,000 repetitions, tolerance 4 SE. */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.5, 0.9})
    void intervalsCoverTheTrueQuantileAsOftenAsTheyPromise(double probability) {
        int repetitions = 2000;
        int size = 100;
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(20_260_101L);
        ZigguratSampler.Exponential exponential = ZigguratSampler.Exponential.of(random);
        double truth = -Math.log1p(-probability);
        int covered = 0;
        for (int i = 0; i < repetitions; i++) {
            Estimate found =
                    OrderedSample.of(exponential.samples(size).toArray()).quantile(probability, 0.95);
            covered += found.low() <= truth && truth <= found.high() ? 1 : 0;
        }
        double expected = RankInterval.of(size, probability, 0.95).coverage();
        double standardError = Math.sqrt(expected * (1 - expected) / repetitions);
        assertEquals(expected, (double) covered / repetitions, 4 * standardError);
        assertTrue(expected >= 0.95);
    }
}
