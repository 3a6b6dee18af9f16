package org.ionohaul.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/** Shares of spread, on samples whose shares are known. */
final class ExplainedSpreadTest {
    private static final int TRIALS = 4000;

    private final UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(9L);
    private final double[] input = random.doubles(TRIALS).toArray();
    private final double[] other = random.doubles(TRIALS).toArray();

    /** Twenty groups of equal size keep all but 1/400 of a uniform variance. */
    @Test
    void anInputThatDecidesEverythingExplainsEverything() {
        assertEquals(1 - 1 / 400.0, spread(i -> Math.exp(input[i])).share().value(), 1e-3);
    }

    @Test
    void anInputThatDoesNotMatterExplainsNothing() {
        ExplainedSpread spread = spread(i -> other[i]);
        // The standard deviation of the share of 19 spurious degrees of freedom: sqrt(2 x 19) / 4000.
        assertEquals(0, spread.share().value(), 4 * Math.sqrt(2 * 19) / TRIALS);
        assertTrue(spread.pValue() > 1e-3);
    }

    /** Both count alike; the expected share is computed by quadrature. Tolerance 4 SE, about 2 sqrt(s (1 - s) / n). */
    @Test
    void twoEqualInputsShareTheSpread() {
        assertEquals(
                shareOfOneOfTwoUniforms(),
                spread(i -> input[i] + other[i]).share().value(),
                0.04);
    }

    @Test
    void thoseThatNeverCameCountAsLast() {
        ExplainedSpread spread = spread(i -> input[i] < 0.5 ? 1 : Double.POSITIVE_INFINITY);
        assertTrue(spread.share().value() > 0.95);
    }

    @Test
    void withoutSpreadNothingIsExplained() {
        ExplainedSpread spread = spread(i -> Double.POSITIVE_INFINITY);
        assertEquals(0, spread.share().value());
        assertEquals(1, spread.pValue());
    }

    @Test
    void tooFewTrialsAreRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> ExplainedSpread.of(Arrays.copyOf(input, 19), Arrays.copyOf(other, 19)));
        assertThrows(IllegalArgumentException.class, () -> ExplainedSpread.of(input, Arrays.copyOf(other, TRIALS - 1)));
    }

    private ExplainedSpread spread(IntToDoubleFunction value) {
        return ExplainedSpread.of(
                input, IntStream.range(0, TRIALS).mapToDouble(value).toArray());
    }

    /** Variance of E[F(u + v) | u] over 1/12 on a fine grid; F is the distribution of a sum of two uniforms. */
    private static double shareOfOneOfTwoUniforms() {
        int steps = 400;
        double[] means = IntStream.range(0, steps)
                .mapToDouble(i -> IntStream.range(0, steps)
                        .mapToDouble(j -> sumBelow((i + 0.5) / steps + (j + 0.5) / steps))
                        .average()
                        .orElseThrow())
                .toArray();
        return 12
                * Arrays.stream(means)
                        .map(mean -> (mean - 0.5) * (mean - 0.5))
                        .average()
                        .orElseThrow();
    }

    private static double sumBelow(double x) {
        return x < 1 ? x * x / 2 : 1 - (2 - x) * (2 - x) / 2;
    }
}
