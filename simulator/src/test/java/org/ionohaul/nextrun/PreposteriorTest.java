package org.ionohaul.nextrun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Two choices, a normal belief, a normal observation: what is lost before and after is known exactly (H. Raiffa and R. Schlaifer,
 * "Applied Statistical Decision Theory", 1961, chapter 5: linear losses and the unit normal loss integral).
 */
final class PreposteriorTest {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final int DRAWS = 2000;
    private static final int REPEATED = 16;

    /** The second choice is right if the unknown is above nothing; it is believed to be normal about {@code mean}, deviation 1. */
    private static double[] unknowns(double mean, UniformRandomProvider random) {
        ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
        return IntStream.range(0, DRAWS)
                .mapToDouble(it -> mean + normal.sample())
                .toArray();
    }

    private static Preposterior linear(double[] unknowns) {
        return new Preposterior(
                new double[][] {
                    Arrays.stream(unknowns).map(it -> Math.max(0, it)).toArray(),
                    Arrays.stream(unknowns).map(it -> Math.max(0, -it)).toArray()
                },
                kept());
    }

    private static Preposterior rightOrWrong(double[] unknowns) {
        return new Preposterior(
                new double[][] {
                    Arrays.stream(unknowns).map(it -> it > 0 ? 1 : 0).toArray(),
                    Arrays.stream(unknowns).map(it -> it > 0 ? 0 : 1).toArray()
                },
                kept());
    }

    private static boolean[] kept() {
        boolean[] kept = new boolean[DRAWS];
        Arrays.fill(kept, true);
        return kept;
    }

    /** The unit normal loss integral. */
    private static double unitLoss(double distance) {
        return NORMAL.density(distance) - distance * NORMAL.survivalProbability(distance);
    }

    /** The mean over the posterior mean of the chance that it lies on the wrong side: by the trapezoidal rule. */
    static double wrongAfter(double mean, double error) {
        double posterior = Math.sqrt(error * error / (1 + error * error));
        double ofMean = Math.sqrt(1 / (1 + error * error));
        double sum = 0;
        for (double z = -8; z < 8; z += 0.001) {
            sum += 0.001 * NORMAL.density(z) * NORMAL.cumulativeProbability(-Math.abs(mean + ofMean * z) / posterior);
        }
        return sum;
    }

    @ParameterizedTest
    @CsvSource({"0, 0.5", "0, 2", "-0.8, 1", "1.5, 0.3", "-2.5, 2"})
    void whatAnObservationIsWorthMeetsTheExactValue(double mean, double error) {
        double[] gained = new double[REPEATED];
        double[] fewer = new double[REPEATED];
        for (int repeat = 0; repeat < REPEATED; repeat++) {
            UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(100 + repeat);
            double[] unknowns = unknowns(mean, random);
            Evidence reading = new ReadingEvidence(unknowns, error);
            Preposterior loss = linear(unknowns);
            gained[repeat] = loss.now() - loss.after(reading, 200, 1, random).loss();
            Preposterior wrong = rightOrWrong(unknowns);
            fewer[repeat] = wrong.now() - wrong.after(reading, 200, 1, random).loss();
        }
        // The value of sample information: the deviation of the posterior mean times the unit loss at its distance from
        // even.
        double ofMean = Math.sqrt(1 / (1 + error * error));
        assertMean(ofMean * unitLoss(Math.abs(mean) / ofMean), gained);
        assertMean(NORMAL.cumulativeProbability(-Math.abs(mean)) - wrongAfter(mean, error), fewer);
    }

    /** Two readings of one error are as good as one of a smaller error. */
    @Test
    void anObservationMadeTwiceIsWorthAsMuchAsOneOfHalfTheVariance() {
        double[] twice = new double[REPEATED];
        for (int repeat = 0; repeat < REPEATED; repeat++) {
            UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(500 + repeat);
            double[] unknowns = unknowns(0.5, random);
            twice[repeat] = rightOrWrong(unknowns)
                    .after(new ReadingEvidence(unknowns, 1), 200, 2, random)
                    .loss();
        }
        assertMean(wrongAfter(0.5, Math.sqrt(0.5)), twice);
    }

    @Test
    void whatTellsNothingIsWorthNothingAndChangesNoChoice() {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(7);
        double[] unknowns = unknowns(-0.3, random);
        Preposterior analysis = rightOrWrong(unknowns);
        Preposterior.After after = analysis.after((truth, time, chance, logs) -> {}, 400, 1, random);
        // One draw in 2,000 is left out by turns, and halves are charged for all: two shares of 1,000 draws agree to
        // 0.02.
        assertEquals(analysis.now(), after.loss(), 0.06);
        assertEquals(0, after.changedShare());
        assertEquals(0, analysis.choice());
    }

    /** Four standard errors, and 0.002 for halves that choose with fewer draws. */
    private static void assertMean(double exact, double[] sample) {
        double mean = Arrays.stream(sample).average().orElseThrow();
        double variance =
                Arrays.stream(sample).map(it -> (it - mean) * (it - mean)).sum() / (sample.length - 1);
        double tolerance = 4 * Math.sqrt(variance / sample.length) + 0.002;
        assertTrue(Math.abs(mean - exact) < tolerance, mean + " for " + exact + ", give or take " + tolerance);
    }
}
