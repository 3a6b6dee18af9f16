package org.ionohaul.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.trial.RatePolicies;
import org.junit.jupiter.api.Test;

/**
 * What each rate policy does, told in short stories. The data rates need 0, 5, 10, 15 dB and carry 10, 20, 40, 80 bytes a frame
 * of 0.1 s; a cycle is eight frames and an acknowledgement of 0.1 s.
 */
final class RatePolicyTest {
    private static final double UNKNOWN = Double.NaN;
    private static final long SECOND = 1_000_000_000L;
    private static final DesignRates RATES =
            new DesignRates(List.of(80 / 0.9, 160 / 0.9, 320 / 0.9, 640 / 0.9), curves(0, 5, 10, 15));

    @Test
    void countingRisesAfterSoManyGoodOversAndFallsAfterSoManyBad() {
        RatePolicy policy = policy(new RatePolicyRules.Count(2, 3, 2, 0.5, false));
        assertEquals(List.of(2, 2, 3), dataRatesAfter(policy, 0, 0, 0));
        assertEquals(List.of(3, 2), dataRatesAfter(policy, 8, 4));
        assertEquals("4 of 8 frames lost", policy.reason());
        // An over with some loss, but not much, breaks either row.
        assertEquals(List.of(2, 2, 2, 2, 2, 3), dataRatesAfter(policy, 0, 0, 3, 0, 0, 0));
    }

    @Test
    void doublingPatienceWaitsTwiceAsLongAfterARiseThatFailsAtOnce() {
        RatePolicy policy = policy(new RatePolicyRules.Count(1, 2, 1, 0.5, true));
        assertEquals(List.of(1, 2, 1), dataRatesAfter(policy, 0, 0, 8));
        assertEquals(List.of(1, 1, 1, 2, 1), dataRatesAfter(policy, 0, 0, 0, 0, 8));
        assertEquals(8, overs(policy, 1));
        // Doing well at the higher data rate first and falling later is no failed rise: hope returns.
        assertEquals(List.of(2, 1), dataRatesAfter(policy, 0, 8));
        assertEquals(List.of(1, 2), dataRatesAfter(policy, 0, 0));
    }

    @Test
    void patienceStopsGrowingAtSixteenTimes() {
        RatePolicy policy = policy(new RatePolicyRules.Count(1, 1, 1, 0.5, true));
        int longest = 0;
        for (int rise = 0; rise < 10; rise++) {
            longest = overs(policy, 1);
            assertEquals(List.of(1), dataRatesAfter(policy, 8));
        }
        assertEquals(16, longest);
    }

    @Test
    void errorRateStaysBetweenItsMarksAndLeavesThemByOneDataRate() {
        RatePolicy policy = policy(new RatePolicyRules.ErrorRate(2, 0.1, 0.5, 0.5));
        // Smoothed loss begins at 0.3: 0.15, then 0.075 rises; anew at 0.3; then 0.65 falls.
        assertEquals(List.of(2, 3, 2), dataRatesAfter(policy, 0, 0, 8));
        assertEquals("smoothed loss 65 %, rises below 10 %, falls above 50 %", policy.reason());
        assertEquals(List.of(2, 2, 2, 2), dataRatesAfter(policy, 2, 2, 2, 2));
    }

    @Test
    void snrLookupTakesTheHighestDataRateWhoseNeedIsMet() {
        RatePolicy policy = policy(new RatePolicyRules.SnrLookup(1, 0.1, 2, 0, 0));
        assertEquals(1, policy.chooseDataRate(0));
        assertEquals(3, after(policy, 1, 0, 12.6));
        // A higher data rate needs 2 dB more than its 15.2 dB before it is taken, the one in use does not.
        assertEquals(3, after(policy, 3, 0, 17.0));
        assertEquals(4, after(policy, 3, 0, 17.6));
        assertEquals(4, after(policy, 4, 0, 15.6));
        assertEquals(1, after(policy, 4, 0, 2));
    }

    @Test
    void snrLookupCorrectsItselfByWhatGetsLost() {
        RatePolicy policy = policy(new RatePolicyRules.SnrLookup(4, 0.2, 0, 1, 0));
        assertEquals(4, after(policy, 4, 0, 15.9));
        assertEquals(3, after(policy, 4, 8, 15.9));
        // Up by a quarter of a step for each good over: the balance lies at 20 % of overs lost.
        assertEquals(3, after(policy, 3, 0, 15.9));
        assertEquals(4, after(policy, 3, 0, 15.9));
    }

    @Test
    void snrLookupSinksWhileNoReportComes() {
        RatePolicy policy = policy(new RatePolicyRules.SnrLookup(1, 0.1, 0, 0, 0));
        assertEquals(4, after(policy, 1, 0, 30));
        assertEquals(3, afterSilence(policy, 4));
        assertEquals(2, afterSilence(policy, 3));
        assertEquals("no report for 2 overs", policy.reason());
        assertEquals(4, after(policy, 2, 0, 30));
    }

    @Test
    void expectedAirtimeWeighsLossAgainstSpeed() {
        RatePolicy policy = policy(new RatePolicyRules.ExpectedAirtime(4, 0, 1));
        assertEquals(4, policy.chooseDataRate(0));
        assertEquals(4, after(policy, 4, 0, UNKNOWN));
        // Data rate 4 brings 80 bytes, data rate 3 at most 40: six of eight lost is too many, three of eight is not.
        assertEquals(4, after(policy, 4, 3, UNKNOWN));
        assertEquals(3, after(policy, 4, 6, UNKNOWN));
        assertEquals(2, after(policy, 3, 8, UNKNOWN));
        assertEquals(2, after(policy, 2, 0, UNKNOWN));
    }

    @Test
    void expectedAirtimeSamplesOnlyWhatCouldBeBetterAndGivesUpAfterFourFailures() {
        RatePolicy policy = policy(new RatePolicyRules.ExpectedAirtime(2, 0.5, 1));
        policy.chooseDataRate(0);
        int[] tried = new int[5];
        int dataRate = after(policy, 2, 0, UNKNOWN);
        for (int over = 0; over < 200; over++) {
            tried[dataRate]++;
            dataRate = after(policy, dataRate, dataRate > 2 ? 8 : 1, UNKNOWN);
        }
        assertEquals(0, tried[1]);
        assertEquals(4, tried[3]);
        assertEquals(4, tried[4]);
        assertEquals(192, tried[2]);
    }

    @Test
    void aBeliefAboutTheSnrLinksAllDataRates() {
        RatePolicy policy = policy(new RatePolicyRules.LatentSnr(2, 16, 0, 0));
        assertEquals(2, policy.chooseDataRate(0));
        assertTrue(after(policy, 2, 0, UNKNOWN) >= 3, "a clean over makes higher data rates likely");
        assertEquals(4, after(policy, 3, 0, UNKNOWN));
        policy.onSilence(SECOND, 4, 8);
        assertEquals(3, after(policy, 4, 8, UNKNOWN));
        assertEquals(3, after(policy, 3, 0, UNKNOWN));
    }

    @Test
    void aBeliefThatForgetsTriesTheHigherDataRateAnew() {
        RatePolicy steadfast = policy(new RatePolicyRules.LatentSnr(3, 8, 0, 0));
        RatePolicy forgetful = policy(new RatePolicyRules.LatentSnr(3, 8, 1, 0));
        for (RatePolicy policy : List.of(steadfast, forgetful)) {
            policy.chooseDataRate(0);
            policy.onAcknowledged(SECOND, 3, 8, 0, UNKNOWN);
            policy.onAcknowledged(2 * SECOND, 4, 8, 8, UNKNOWN);
            assertEquals(3, policy.chooseDataRate(3 * SECOND));
        }
        assertEquals(3, steadfast.chooseDataRate(100 * SECOND));
        assertEquals(4, forgetful.chooseDataRate(100 * SECOND));
    }

    @Test
    void aReportedSnrMovesTheBelief() {
        RatePolicy policy = policy(new RatePolicyRules.LatentSnr(1, 8, 0, 1));
        policy.chooseDataRate(0);
        assertEquals(4, after(policy, 1, 0, 25));
    }

    @Test
    void aFixedDataRateStays() {
        RatePolicy policy = new FixedPolicy(3);
        policy.onAcknowledged(SECOND, 3, 8, 0, UNKNOWN);
        policy.onSilence(SECOND, 3, 8);
        assertEquals(3, policy.chooseDataRate(SECOND));
        assertEquals("fixed data rate", policy.reason());
    }

    @Test
    void noPolicyLeavesTheDataRatesThereAre() {
        for (RatePolicyRules rules : List.of(
                new RatePolicyRules.Count(2, 1, 1, 0.5, false),
                new RatePolicyRules.ErrorRate(2, 0.1, 0.5, 1),
                new RatePolicyRules.SnrLookup(2, 0.1, 0, 1, 0))) {
            RatePolicy policy = policy(rules);
            assertEquals(2, policy.chooseDataRate(0), rules::toString);
            for (int over = 0; over < 12; over++) {
                after(policy, policy.chooseDataRate(SECOND), 0, 45);
            }
            assertEquals(4, policy.chooseDataRate(SECOND), rules::toString);
            for (int over = 0; over < 60; over++) {
                afterSilence(policy, policy.chooseDataRate(SECOND));
            }
            assertEquals(1, policy.chooseDataRate(SECOND), rules::toString);
        }
    }

    @Test
    void countingTellsHowFarItIsAndWhatMadeItMove() {
        RatePolicy policy = policy(new RatePolicyRules.Count(2, 2, 2, 0.5, true));
        // 3 of 8 lost is neither good nor bad, 4 of 8 is bad, silence too.
        assertEquals(List.of(2, 2, 2), dataRatesAfter(policy, 3, 3, 3));
        assertEquals("0 good overs of 2 needed to rise, 0 bad of 2 to fall", policy.reason());
        assertEquals(List.of(2, 3), dataRatesAfter(policy, 0, 0));
        assertEquals("no frame lost for long enough", policy.reason());
        afterSilence(policy, 3);
        assertEquals("0 good overs of 2 needed to rise, 1 bad of 2 to fall", policy.reason());
        assertEquals(2, after(policy, 3, 4, 7.25));
        assertEquals("4 of 8 frames lost, estimate 7.3 dB", policy.reason());
        after(policy, 2, 0, UNKNOWN);
        assertEquals("1 good overs of 4 needed to rise, 0 bad of 2 to fall", policy.reason());
        afterSilence(policy, 2);
        assertEquals(1, afterSilence(policy, 2));
        assertEquals("8 of 8 frames lost", policy.reason());
    }

    @Test
    void errorRateStaysOnItsMarks() {
        RatePolicy policy = policy(new RatePolicyRules.ErrorRate(2, 0.25, 0.5, 1));
        assertEquals(List.of(2, 2), dataRatesAfter(policy, 2, 4));
        assertEquals(List.of(3), dataRatesAfter(policy, 1));
        assertEquals(List.of(2), dataRatesAfter(policy, 5));
        assertEquals(1, afterSilence(policy, 2));
        assertEquals("smoothed loss 100 %, rises below 25 %, falls above 50 %", policy.reason());
    }

    @Test
    void snrLookupMeetsANeedThatIsJustMetAndLossesAsManyAsMeant() {
        RatePolicy policy = policy(new RatePolicyRules.SnrLookup(1, 0.25, 0, 1, 0));
        // Data rate 4 loses a quarter of its frames at 15.25 dB; two of eight lost is no reason to sink: up by a third.
        assertEquals(4, after(policy, 1, 2, 15.25 - 1.0 / 3));
        assertEquals("estimate 14.9 dB, correction +0.3 dB, data rate needs 15.3 dB", policy.reason());
        assertEquals(3, after(policy, 4, 2, 14.5));
        assertEquals(3, after(policy, 3, 3, 15.5));
        assertEquals("estimate 15.5 dB, correction -0.3 dB, data rate needs 10.3 dB", policy.reason());
        afterSilence(policy, 3);
        assertEquals(2, after(policy, 2, 0, 10.25 + 0.9));
        assertEquals("estimate 11.2 dB, correction -1.0 dB, data rate needs 5.3 dB", policy.reason());
    }

    @Test
    void expectedAirtimeTrustsNoHigherDataRateThatItHasNotTried() {
        RatePolicy policy = policy(new RatePolicyRules.ExpectedAirtime(2, 0, 0.5));
        assertEquals(2, policy.chooseDataRate(0));
        assertEquals(2, after(policy, 2, 0, UNKNOWN));
        assertEquals("data rate 2 expects 177.8 bytes a second", policy.reason());
        // Half of the weight on the newest over: 1/2 lost, then 3/4, when data rate 1 promises more.
        assertEquals(2, after(policy, 2, 6, UNKNOWN));
        assertEquals("data rate 2 expects 111.1 bytes a second", policy.reason());
        assertEquals(1, afterSilence(policy, 2));
        assertEquals("data rate 1 expects 88.9 bytes a second", policy.reason());
    }

    @Test
    void expectedAirtimeSamplesAnewWhatFailedOnceALowerDataRateDoesWell() {
        RatePolicy policy = policy(new RatePolicyRules.ExpectedAirtime(2, 0.9, 1));
        policy.chooseDataRate(0);
        policy.onAcknowledged(SECOND, 2, 8, 1, UNKNOWN);
        for (int failure = 0; failure < 4; failure++) {
            policy.onSilence(SECOND, 3, 8);
            policy.onSilence(SECOND, 4, 8);
        }
        // 50 overs, none of them a sample: were samples allowed, the chance of that would be 0.1^50.
        for (int over = 0; over < 50; over++) {
            assertEquals(2, after(policy, 2, 1, UNKNOWN));
            assertEquals("data rate 2 expects 155.6 bytes a second", policy.reason());
        }
        policy.onAcknowledged(SECOND, 2, 8, 0, UNKNOWN);
        policy.onAcknowledged(SECOND, 2, 8, 1, UNKNOWN);
        int samples = 0;
        for (int over = 0; over < 50; over++) {
            int dataRate = policy.chooseDataRate(SECOND);
            assertTrue(dataRate == 2 || dataRate == 3, "only the next is worth a trial again");
            assertEquals(
                    (dataRate == 3 ? "sampling; best known " : "") + "data rate 2 expects 155.6 bytes a second",
                    policy.reason());
            samples += dataRate == 3 ? 1 : 0;
        }
        // 45 expected; 4 standard errors of 50 draws at 0.9 are 8.5.
        assertEquals(45, samples, 8.5);
    }

    @Test
    void expectedAirtimeNeverSamplesWhereItIsNotAllowedOrNothingIsWon() {
        RatePolicy never = new ExpectedAirtimePolicy(new RatePolicyRules.ExpectedAirtime(1, 0, 1), RATES, () -> 0);
        never.chooseDataRate(0);
        assertEquals(1, after(never, 1, 0, UNKNOWN));
        DesignRates alike = new DesignRates(List.of(100.0, 100.0), curves(0, 5));
        RatePolicy nothingWon =
                new ExpectedAirtimePolicy(new RatePolicyRules.ExpectedAirtime(1, 0.9, 1), alike, () -> 0);
        nothingWon.chooseDataRate(0);
        assertEquals(1, after(nothingWon, 1, 0, UNKNOWN));
    }

    @Test
    void curvesOfOtherDataRatesThanAreMeantAreRefused() {
        double[][] one = {{0, 1}};
        double[][] two = {{1, 0}, {1, 0}};
        assertThrows(IllegalArgumentException.class, () -> new LossCurves(one, two));
        assertThrows(IllegalArgumentException.class, () -> new LossCurves(new double[0][], new double[0][]));
        assertThrows(IllegalArgumentException.class, () -> new DesignRates(List.of(1.0), curves(0, 5)));
        assertEquals(2, new DesignRates(List.of(1.0, 2.0), curves(0, 5)).dataRateCount());
    }

    @Test
    void curvesTellTheirEndsAndNeedsThatAreNeverMet() {
        LossCurves curves = new LossCurves(new double[][] {{0, 10}}, new double[][] {{0.8, 0.4}});
        assertEquals(0.8, curves.loss(1, 0));
        assertEquals(0.6, curves.loss(1, 5), 1e-12);
        assertEquals(0.4, curves.loss(1, 10));
        assertEquals(10, curves.needDb(1, 0.4));
        assertEquals(Double.POSITIVE_INFINITY, curves.needDb(1, 0.3));
    }

    @Test
    void benchCurvesTellNeedsAndLosses() {
        LossCurves curves = RATES.curves();
        // The chance of success grows from 0 to 1 over 1 dB around its need.
        assertEquals(10.5, curves.needDb(3, 0), 1e-9);
        assertEquals(10.0, curves.needDb(3, 0.5), 1e-9);
        assertEquals(0.5, curves.loss(3, 10), 1e-9);
        assertEquals(0.4, curves.loss(3, 10.1), 1e-9);
        assertEquals(1, curves.loss(3, -1000));
        assertEquals(0, curves.loss(3, 1000));
    }

    /** Returns the data rate chosen after each over of 8 frames, given how many of them were lost. */
    private static List<Integer> dataRatesAfter(RatePolicy policy, int... losses) {
        return Arrays.stream(losses)
                .mapToObj(lost -> after(policy, 1, lost, UNKNOWN))
                .toList();
    }

    /** Returns how many good overs in a row it takes to rise above a data rate. */
    private static int overs(RatePolicy policy, int dataRate) {
        int overs = 1;
        while (after(policy, dataRate, 0, UNKNOWN) == dataRate) {
            overs++;
        }
        return overs;
    }

    private static int after(RatePolicy policy, int dataRate, int lost, double snrDb) {
        policy.onAcknowledged(SECOND, dataRate, 8, lost, snrDb);
        return policy.chooseDataRate(SECOND);
    }

    private static int afterSilence(RatePolicy policy, int dataRate) {
        policy.onSilence(SECOND, dataRate, 8);
        return policy.chooseDataRate(SECOND);
    }

    private static RatePolicy policy(RatePolicyRules rules) {
        return RatePolicies.of(rules, RATES, new TrialStreams(3, 0).open(Purpose.POLICY, 0), () -> {
            throw new AssertionError("none of these knows the sky");
        });
    }

    /** Curves that rise from sure loss to none within half a decibel around a need, from -40 to 60 dB. */
    private static LossCurves curves(double... needsDb) {
        double[][] snrDb = new double[needsDb.length][401];
        double[][] loss = new double[needsDb.length][401];
        for (int at = 0; at < needsDb.length; at++) {
            for (int point = 0; point < 401; point++) {
                snrDb[at][point] = -40 + 0.25 * point;
                loss[at][point] = Math.max(0, Math.min(1, needsDb[at] - snrDb[at][point] + 0.5));
            }
        }
        return new LossCurves(snrDb, loss);
    }
}
