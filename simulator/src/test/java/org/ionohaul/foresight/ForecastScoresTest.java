package org.ionohaul.foresight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.ionohaul.foresight.Guess.Span;
import org.junit.jupiter.api.Test;

/** Scores, and what is said of learners of known worth. */
final class ForecastScoresTest {
    private static final double HORIZON = 3600;
    private static final double NEVER = Double.POSITIVE_INFINITY;
    private static final double MEDIAN = 480;

    /** Scatter of the times, in doublings. */
    private static final double SCATTER = 0.6;

    private static Played played(
            Span guess, Span other, double first, double second, double sureness, boolean isRight) {
        return new Played(
                "invented",
                1,
                1,
                10_000,
                HORIZON,
                "one",
                sureness,
                isRight ? Played.Verdict.RIGHT : Played.Verdict.WRONG,
                List.of(new Played.Run("one", guess, first, guess), new Played.Run("two", other, second, other)));
    }

    /** By hand from equation 43 of Gneiting and Raftery (2007) with alpha 0.2: width, and 10 times what is missed. */
    @Test
    void theIntervalScoreIsWidthAndTenTimesWhatIsMissed() {
        Span span = new Span(240, 960);
        assertEquals(2, span.score(480, HORIZON), 1e-12, "two doublings wide");
        assertEquals(2 + 10, span.score(120, HORIZON), 1e-12, "one doubling too early");
        assertEquals(2 + 10, span.score(1920, HORIZON), 1e-12, "one too late");
        assertEquals(2 + 10 * Math.log(3.75) / Math.log(2), span.score(NEVER, HORIZON), 1e-12, "as at the horizon");
        assertEquals(0, new Span(NEVER, NEVER).score(NEVER, HORIZON), 1e-12);
        assertEquals(1, new Span(1800, NEVER).score(NEVER, HORIZON), 1e-12);
    }

    @Test
    void aRangeHoldsWhatLiesInItAndWhatNeverCameIfItsEndIsNever() {
        assertTrue(new Span(240, 960).holds(240, HORIZON));
        assertTrue(!new Span(240, 960).holds(239, HORIZON));
        assertTrue(!new Span(240, 960).holds(NEVER, HORIZON));
        assertTrue(new Span(240, NEVER).holds(NEVER, HORIZON));
        assertTrue(new Span(NEVER, NEVER).holds(NEVER, HORIZON));
        assertTrue(!new Span(NEVER, NEVER).holds(3000, HORIZON));
    }

    /** It is proper: whoever says the true tenth and ninth scores least on average, also where much never comes. */
    @Test
    void nobodyScoresBetterThanByTheTruth() {
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(2_007L);
        for (double median : new double[] {MEDIAN, 3000}) {
            double[] times = IntStream.range(0, 20_000)
                    .mapToDouble(it -> time(random, median))
                    .toArray();
            double z = NormalDistribution.of(0, 1).inverseCumulativeProbability(0.9);
            double truth = mean(span(median, -z * SCATTER, z * SCATTER), times);
            for (double low : new double[] {-1.2, -0.5, -0.2}) {
                for (double high : new double[] {0.2, 0.5, 1.2}) {
                    Span other = span(median, low * z * SCATTER, high * z * SCATTER);
                    // Both are means over the same times; the difference's standard error is below 0.02 here.
                    assertTrue(mean(other, times) >= truth - 0.05, low + " to " + high + " at " + median);
                }
            }
        }
    }

    private static double time(UniformRandomProvider random, double median) {
        double time = median
                * Math.pow(
                        2,
                        SCATTER * ZigguratSampler.NormalizedGaussian.of(random).sample());
        return time > HORIZON ? NEVER : time;
    }

    private static Span span(double median, double low, double high) {
        return new Span(median * Math.pow(2, low), median * Math.pow(2, high));
    }

    private static double mean(Span span, double[] times) {
        return java.util.Arrays.stream(times)
                .map(it -> span.score(it, HORIZON))
                .average()
                .orElseThrow();
    }

    @Test
    void theBrierScoreIsTheSquareOfWhatWasMissedAndUndecidedRoundsDoNotCount() {
        Span any = new Span(1, 2);
        assertEquals(0.04, played(any, any, 1, 1, 0.8, true).brier().orElseThrow(), 1e-12);
        assertEquals(0.64, played(any, any, 1, 1, 0.8, false).brier().orElseThrow(), 1e-12);
        Played right = played(any, any, 1, 1, 0.8, true);
        Played undecided =
                new Played("invented", 1, 2, 10, HORIZON, "one", 0.8, Played.Verdict.UNDECIDED, right.runs());
        assertEquals(OptionalDouble.empty(), undecided.brier());
        Calibration both = new Calibration(List.of(right, undecided));
        assertEquals(1, both.decided());
        assertEquals(0.04, both.brier().orElseThrow().value(), 1e-12);
        assertTrue(new Calibration(List.of(undecided)).brier().isEmpty());
    }

    /** Rounds of a learner whose ranges are so many times as wide as they should be. */
    private static String said(
            UniformRandomProvider random, int rounds, double width, double sureness, double winning) {
        double z = NormalDistribution.of(0, 1).inverseCumulativeProbability(0.9);
        Span span = span(MEDIAN, -width * z * SCATTER, width * z * SCATTER);
        return new CalibrationText(new Calibration(IntStream.range(0, rounds)
                        .mapToObj(it -> {
                            double first = time(random, MEDIAN);
                            // The two modes meet the same sky three times of four.
                            double second = random.nextDouble() < 0.75 ? first : time(random, MEDIAN);
                            return played(span, span, first, second, sureness, random.nextDouble() < winning);
                        })
                        .toList()))
                .sentences()
                .toString();
    }

    @Test
    void learnersWhoAreRightAreSeldomCorrectedAndOthersMostlyAre() {
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(80L);
        int learners = 1000;
        // At most 5 of 100 each, and four standard errors: of two sentences that may be wrong.
        double most = 0.05 + 4 * Math.sqrt(0.05 * 0.95 / learners);
        for (int rounds : new int[] {3, 10, 40}) {
            int its = rounds;
            List<String> right = IntStream.range(0, learners)
                    .mapToObj(it -> said(random, its, 1, 0.7, 0.7))
                    .toList();
            assertTrue(share(right, "too narrow") + share(right, "wider than") <= most, rounds + " rounds, ranges");
            assertTrue(share(right, "surer of winners") <= most, rounds + " rounds, winners");
        }
        List<String> narrow = IntStream.range(0, 300)
                .mapToObj(it -> said(random, 20, 0.3, 0.95, 0.6))
                .toList();
        assertTrue(share(narrow, "They are too narrow") > 0.9, "three tenths as wide");
        assertTrue(share(narrow, "You are surer of winners than you may be") > 0.9, "95 % said, 60 % right");
        List<String> wide = IntStream.range(0, 300)
                .mapToObj(it -> said(random, 40, 2.5, 0.5, 0.95))
                .toList();
        assertTrue(share(wide, "They are wider than they need be") > 0.9, "2.5 times as wide");
        assertTrue(share(wide, "You could be surer of winners") > 0.9, "50 % said, 95 % right");
    }

    private static double share(List<String> texts, String words) {
        return (double) texts.stream().filter(it -> it.contains(words)).count() / texts.size();
    }
}
