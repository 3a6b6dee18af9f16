package org.ionohaul.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/**
 * The belief about the SNR against Bayes' rule for normal distributions (e.g. A. Gelman et al., "Bayesian Data Analysis",
 * 3rd ed., section 2.5: precisions add, means are weighed by them), as the policy tells it to the trace.
 *
 * <p>Data rate 1 gets through at any SNR, so that its frames say nothing of it; data rate 2 begins to at 5 dB, for sure at
 * 5.5 dB: the belief starts at 6.5 dB.
 */
final class LatentSnrPolicyTest {
    private static final double START_DB = 6.5;
    private static final double PRIOR_DB = 4;
    private static final long SECOND = 1_000_000_000L;
    private static final DesignRates RATES = new DesignRates(
            List.of(100.0, 300.0), new LossCurves(new double[][] {{-60, 60}, {5, 5.5}}, new double[][] {{0, 0}, {1, 0}
            }));
    /** Half of the last digit told, and a little for the grid of half a decibel. */
    private static final double AS_TOLD_DB = 0.06;

    private static final double FLOOR = 0.03;

    @Test
    void theBeliefStartsWhereTheStartDataRateWorksWell() {
        LatentSnrPolicy policy = policy(0, 0);
        assertEquals(2, policy.chooseDataRate(0));
        assertBelief(START_DB, PRIOR_DB, policy);
    }

    @Test
    void theBeliefStaysOnTheGridWhereADataRateAlwaysOrNeverWorks() {
        LossCurves curves = new LossCurves(new double[][] {{-60}, {90}}, new double[][] {{0}, {1}});
        for (int start = 1; start <= 2; start++) {
            LatentSnrPolicy policy = new LatentSnrPolicy(
                    new RatePolicyRules.LatentSnr(start, 0.1, 0, 0), new DesignRates(List.of(1.0, 2.0), curves));
            assertBelief(start == 1 ? -29 : 50, 0, policy);
        }
    }

    @Test
    void aReportIsWeighedAgainstTheBelief() {
        LatentSnrPolicy policy = policy(0, 3);
        policy.chooseDataRate(0);
        policy.onAcknowledged(SECOND, 1, 8, 0, 12);
        // Precisions 1/16 and 1/9: (6.5 x 9 + 12 x 16) / 25, and sqrt(16 x 9 / 25).
        assertBelief(10.02, 2.4, policy);
        policy.onAcknowledged(SECOND, 1, 8, 0, Double.NaN);
        assertBelief(10.02, 2.4, policy);
    }

    @Test
    void aReportFarFromTheBeliefMovesItWithoutEndingIt() {
        LatentSnrPolicy policy = policy(0, 2);
        policy.chooseDataRate(0);
        for (int over = 0; over < 20; over++) {
            policy.onAcknowledged(SECOND, 1, 8, 0, 40);
        }
        double precision = 1.0 / 16 + 20.0 / 4;
        assertBelief((START_DB / 16 + 40 * 20.0 / 4) / precision, 1 / Math.sqrt(precision), policy);
    }

    @Test
    void reportsCountForNothingWhereTheirErrorIsNotKnown() {
        LatentSnrPolicy policy = policy(0, 0);
        policy.chooseDataRate(0);
        policy.onAcknowledged(SECOND, 1, 8, 0, 12);
        assertBelief(START_DB, PRIOR_DB, policy);
    }

    @Test
    void theBeliefWidensWithTheRootOfTime() {
        LatentSnrPolicy policy = policy(1, 0);
        policy.chooseDataRate(2 * SECOND);
        policy.onAcknowledged(7 * SECOND, 1, 8, 0, Double.NaN);
        assertBelief(START_DB, Math.sqrt(16 + 5), policy);
        policy.chooseDataRate(11 * SECOND);
        assertBelief(START_DB, Math.sqrt(16 + 9), policy);
        policy.onSilence(18 * SECOND, 1, 8);
        assertBelief(START_DB, Math.sqrt(16 + 16), policy);
    }

    @Test
    void aLongPauseWidensItByAThirdOfTwentyDecibels() {
        LatentSnrPolicy policy = policy(100, 0);
        policy.chooseDataRate(0);
        policy.chooseDataRate(1000 * SECOND);
        // A normal curve cut off at three standard deviations has 0.9733 of its variance (density at 3: 0.00443).
        assertBelief(START_DB, Math.sqrt(16 + 0.9733 * 400.0 / 9), policy);
    }

    @Test
    void aLostFrameSpeaksForAnSnrBelowTheNeed() {
        // Above 5.25 dB a lost frame has a chance of 0.03, below of 0.97, so that the halves of the normal curve are
        // weighed.
        double cut = (5.25 - START_DB) / PRIOR_DB;
        NormalDistribution normal = NormalDistribution.of(0, 1);
        double below = (1 - FLOOR) * normal.cumulativeProbability(cut);
        double above = FLOOR * normal.survivalProbability(cut);
        double mean = START_DB + PRIOR_DB * normal.density(cut) * (FLOOR - (1 - FLOOR)) / (below + above);
        for (boolean isSilence : List.of(true, false)) {
            LatentSnrPolicy policy = policy(0, 0);
            policy.chooseDataRate(0);
            if (isSilence) {
                policy.onSilence(SECOND, 2, 8);
            } else {
                policy.onAcknowledged(SECOND, 2, 1, 1, Double.NaN);
            }
            assertEquals(mean, told(policy, 1), 0.1);
            // Rate 1 brings 97 bytes a second, rate 2 as often 97 % of 300 as the SNR lies above, else 3 %.
            double expected = 300 * (FLOOR + (1 - 2 * FLOOR) * above / (below + above));
            assertEquals(97 > expected ? 1 : 2, policy.chooseDataRate(SECOND));
            assertEquals(Math.max(97, expected), told(policy, 3), 0.06);
        }
    }

    @Test
    void whatIsBeyondBeliefLeavesNone() {
        LatentSnrPolicy policy = policy(0, 0);
        policy.chooseDataRate(0);
        policy.onAcknowledged(SECOND, 2, 2000, 1000, Double.NaN);
        // Alike from -30 to 50 dB in steps of half a decibel.
        assertBelief(10, 0.5 * Math.sqrt((161 * 161 - 1) / 12.0), policy);
    }

    @Test
    void ofTwoDataRatesThatPromiseAlikeTheMoreRobustIsTaken() {
        LossCurves alike = new LossCurves(new double[][] {{-60, 60}, {-60, 60}}, new double[][] {{0, 0}, {0, 0}});
        LatentSnrPolicy policy = new LatentSnrPolicy(
                new RatePolicyRules.LatentSnr(2, 4, 0, 0), new DesignRates(List.of(100.0, 100.0), alike));
        assertEquals(2, policy.chooseDataRate(0));
        assertEquals(1, policy.chooseDataRate(SECOND));
    }

    private static LatentSnrPolicy policy(double forgettingDb, double estimateDb) {
        return new LatentSnrPolicy(new RatePolicyRules.LatentSnr(2, PRIOR_DB, forgettingDb, estimateDb), RATES);
    }

    private static void assertBelief(double meanDb, double deviationDb, LatentSnrPolicy policy) {
        assertEquals(meanDb, told(policy, 1), AS_TOLD_DB);
        assertEquals(deviationDb, told(policy, 2), AS_TOLD_DB);
    }

    /** Returns the mean, the deviation or the expectation that the reason of the last choice tells. */
    private static double told(LatentSnrPolicy policy, int which) {
        Matcher told = Pattern.compile("believes ([-.\\d]+) dB ± ([.\\d]+) dB, expects ([.\\d]+) bytes a second")
                .matcher(policy.reason());
        assertTrue(told.matches(), policy::reason);
        return Double.parseDouble(told.group(which));
    }
}
