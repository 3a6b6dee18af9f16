package org.ionohaul.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Kaplan-Meier and log-rank on the remission times of Freireich et al. 1963. */
final class SurvivalCurveTest {
    /** Three decimals printed with the example of NAG routine g12aac; six computed from the same data. */
    @Test
    void treatedGroupHasTheTextbookCurveAndGreenwoodErrors() {
        double[][] textbook = {
            {6, 21, 3, 0.857143, 0.076360},
            {7, 17, 1, 0.806723, 0.086935},
            {10, 15, 1, 0.752941, 0.096350},
            {13, 12, 1, 0.690196, 0.106815},
            {16, 11, 1, 0.627451, 0.114054},
            {22, 7, 1, 0.537815, 0.128234},
            {23, 6, 1, 0.448179, 0.134591}
        };
        List<SurvivalCurve.Step> steps =
                SurvivalCurve.of(RemissionTimes.TREATED).steps();
        assertEquals(textbook.length, steps.size());
        for (int i = 0; i < textbook.length; i++) {
            assertEquals(textbook[i][0], steps.get(i).time());
            assertEquals(textbook[i][1], steps.get(i).atRisk());
            assertEquals(textbook[i][2], steps.get(i).events());
            assertEquals(textbook[i][3], steps.get(i).survival(), 5e-7);
            assertEquals(textbook[i][4], steps.get(i).standardError(), 5e-7);
        }
    }

    /** Without censoring the curve is one less the empirical distribution: counts of 21 by hand. */
    @Test
    void withoutCensoringTheCurveIsTheEmpiricalDistribution() {
        int[] left = {19, 17, 16, 14, 12, 8, 6, 4, 3, 2, 1, 0};
        double[] survival = SurvivalCurve.of(RemissionTimes.PLACEBO).steps().stream()
                .mapToDouble(SurvivalCurve.Step::survival)
                .toArray();
        assertEquals(left.length, survival.length);
        IntStream.range(0, left.length).forEach(i -> assertEquals(left[i] / 21.0, survival[i], 1e-12));
    }

    /** The medians that every textbook prints with these data. */
    @Test
    void mediansAreThoseOfTheTextbooks() {
        assertEquals(23, SurvivalCurve.of(RemissionTimes.TREATED).quantile(0.5));
        assertEquals(8, SurvivalCurve.of(RemissionTimes.PLACEBO).quantile(0.5));
    }

    @Test
    void aQuantileBelowWhereTheCurveEndsIsNotReached() {
        assertEquals(
                Double.POSITIVE_INFINITY,
                SurvivalCurve.of(RemissionTimes.TREATED).quantile(0.9));
    }

    @Test
    void roundingDoesNotMoveAMedianToTheNextObservation() {
        List<Observation> ten = IntStream.rangeClosed(1, 10)
                .mapToObj(i -> new Observation(i, true))
                .toList();
        assertEquals(5, SurvivalCurve.of(ten).quantile(0.5));
    }

    /** O and E of the textbooks (9, 19.25); chi-squared, z and p: documentation of R package fastlogranktest. */
    @Test
    void logRankTestTellsTheGroupsApartAsPublished() {
        LogRankTest test = LogRankTest.of(RemissionTimes.TREATED, RemissionTimes.PLACEBO);
        assertEquals(9, test.observed());
        assertEquals(19.2505, test.expected(), 5e-5);
        assertEquals(6.25696, test.variance(), 5e-6);
        assertEquals(16.79294, test.chiSquared(), 5e-6);
        assertEquals(-4.097919, test.z(), 5e-7);
        assertEquals(4.168809e-05, test.pValue(), 5e-12);
    }

    @Test
    void timesThatCannotBeWatchedAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Observation(Double.NaN, true));
        assertThrows(IllegalArgumentException.class, () -> new Observation(-1, true));
        assertThrows(IllegalArgumentException.class, () -> new Observation(Double.POSITIVE_INFINITY, false));
    }
}
