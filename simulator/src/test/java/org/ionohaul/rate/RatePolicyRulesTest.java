package org.ionohaul.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ionohaul.limits.TestedRange;
import org.junit.jupiter.api.Test;

/** The ranges that the rules' own Javadoc promises. */
final class RatePolicyRulesTest {
    private static final double ABOVE_ZERO = Double.MIN_VALUE;
    private static final double BELOW_ONE = Math.nextDown(1.0);
    private static final double FINITE = Double.MAX_VALUE;

    @Test
    void countsOfOversBeginAtOne() {
        TestedRange.ofCount(
                "goodToRise",
                1,
                Integer.MAX_VALUE,
                it -> new RatePolicyRules.Count(1, Math.toIntExact(it), 1, 0.5, false));
        TestedRange.ofCount(
                "badToFall",
                1,
                Integer.MAX_VALUE,
                it -> new RatePolicyRules.Count(1, 1, Math.toIntExact(it), 0.5, false));
        TestedRange.ofNumber("badShare", ABOVE_ZERO, 1, it -> new RatePolicyRules.Count(1, 1, 1, it, false));
    }

    @Test
    void marksOfTheErrorRateLieInOrder() {
        TestedRange.ofNumber("riseBelow", 0, Math.nextDown(0.5), it -> new RatePolicyRules.ErrorRate(1, it, 0.5, 1));
        TestedRange.ofNumber("fallAbove", Math.nextUp(0.0), 1, it -> new RatePolicyRules.ErrorRate(1, 0, it, 1));
        TestedRange.ofNumber("memory", ABOVE_ZERO, 1, it -> new RatePolicyRules.ErrorRate(1, 0, 1, it));
    }

    @Test
    void aTargetOfLossIsAShareAndDecibelsAreNotNegative() {
        TestedRange.ofNumber("targetLoss", ABOVE_ZERO, BELOW_ONE, it -> new RatePolicyRules.SnrLookup(1, it, 0, 0, 0));
        TestedRange.ofNumber("hysteresisDb", 0, FINITE, it -> new RatePolicyRules.SnrLookup(1, 0.1, it, 0, 0));
        TestedRange.ofNumber("correctionStepDb", 0, FINITE, it -> new RatePolicyRules.SnrLookup(1, 0.1, 0, it, 0));
        TestedRange.ofNumber("estimateDeviationDb", 0, FINITE, it -> new RatePolicyRules.SnrLookup(1, 0.1, 0, 0, it));
    }

    @Test
    void notEveryOverIsASample() {
        TestedRange.ofNumber("samplingShare", 0, BELOW_ONE, it -> new RatePolicyRules.ExpectedAirtime(1, it, 1));
        TestedRange.ofNumber("memory", ABOVE_ZERO, 1, it -> new RatePolicyRules.ExpectedAirtime(1, 0, it));
    }

    @Test
    void aBeliefHasAWidth() {
        TestedRange.ofNumber("priorDeviationDb", ABOVE_ZERO, FINITE, it -> new RatePolicyRules.LatentSnr(1, it, 0, 0));
        TestedRange.ofNumber("forgettingDbPerRootSecond", 0, FINITE, it -> new RatePolicyRules.LatentSnr(1, 1, it, 0));
        TestedRange.ofNumber("estimateDeviationDb", 0, FINITE, it -> new RatePolicyRules.LatentSnr(1, 1, 0, it));
    }

    @Test
    void onlyPoliciesThatAreToldTheSnrUseIt() {
        assertTrue(new RatePolicyRules.SnrLookup(1, 0.1, 0, 0, 3).usesSnr());
        assertTrue(new RatePolicyRules.LatentSnr(1, 1, 0, 3).usesSnr());
        RatePolicyRules fixed = new RatePolicyRules.Fixed(1);
        assertFalse(fixed.usesSnr());
        assertEquals(1, fixed.estimateDeviationDb());
    }
}
