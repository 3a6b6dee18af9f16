package org.ionohaul.link;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What each speed policy does, told in short stories. The levels are those of {@link PlainLink}. */
final class LadderPolicyTest {
    private static final double UNKNOWN = Double.NaN;
    private static final long SECOND = 1_000_000_000L;

    @Test
    void countingRisesAfterSoManyGoodOversAndFallsAfterSoManyBad() {
        SpeedPolicy policy = policy(new LadderRules.Count(2, 3, 2, 0.5, false));
        assertEquals(List.of(2, 2, 3), levelsAfter(policy, 0, 0, 0));
        assertEquals(List.of(3, 2), levelsAfter(policy, 8, 4));
        assertEquals("4 of 8 frames lost", policy.reason());
        // An over with some loss, but not much, breaks either row.
        assertEquals(List.of(2, 2, 2, 2, 2, 3), levelsAfter(policy, 0, 0, 3, 0, 0, 0));
    }

    @Test
    void doublingPatienceWaitsTwiceAsLongAfterARiseThatFailsAtOnce() {
        SpeedPolicy policy = policy(new LadderRules.Count(1, 2, 1, 0.5, true));
        assertEquals(List.of(1, 2, 1), levelsAfter(policy, 0, 0, 8));
        assertEquals(List.of(1, 1, 1, 2, 1), levelsAfter(policy, 0, 0, 0, 0, 8));
        assertEquals(8, overs(policy, 1));
        // Doing well at the higher level first and falling later is no failed rise: hope returns.
        assertEquals(List.of(2, 1), levelsAfter(policy, 0, 8));
        assertEquals(List.of(1, 2), levelsAfter(policy, 0, 0));
    }

    @Test
    void patienceStopsGrowingAtSixteenTimes() {
        SpeedPolicy policy = policy(new LadderRules.Count(1, 1, 1, 0.5, true));
        int longest = 0;
        for (int rise = 0; rise < 10; rise++) {
            longest = overs(policy, 1);
            assertEquals(List.of(1), levelsAfter(policy, 8));
        }
        assertEquals(16, longest);
    }

    @Test
    void errorRateStaysBetweenItsMarksAndLeavesThemByOneLevel() {
        SpeedPolicy policy = policy(new LadderRules.ErrorRate(2, 0.1, 0.5, 0.5));
        // Smoothed loss begins at 0.3: 0.15, then 0.075 rises; anew at 0.3; then 0.65 falls.
        assertEquals(List.of(2, 3, 2), levelsAfter(policy, 0, 0, 8));
        assertEquals("smoothed loss 65 %, rises below 10 %, falls above 50 %", policy.reason());
        assertEquals(List.of(2, 2, 2, 2), levelsAfter(policy, 2, 2, 2, 2));
    }

    @Test
    void snrLookupTakesTheHighestLevelWhoseNeedIsMet() {
        SpeedPolicy policy = policy(new LadderRules.SnrLookup(1, 0.1, 2, 0, 0));
        assertEquals(1, policy.chooseLevel(0));
        assertEquals(3, after(policy, 1, 0, 12.6));
        // A higher level needs 2 dB more than its 15.2 dB before it is taken, the one in use does not.
        assertEquals(3, after(policy, 3, 0, 17.0));
        assertEquals(4, after(policy, 3, 0, 17.6));
        assertEquals(4, after(policy, 4, 0, 15.6));
        assertEquals(1, after(policy, 4, 0, 2));
    }

    @Test
    void snrLookupCorrectsItselfByWhatGetsLost() {
        SpeedPolicy policy = policy(new LadderRules.SnrLookup(4, 0.2, 0, 1, 0));
        assertEquals(4, after(policy, 4, 0, 15.9));
        assertEquals(3, after(policy, 4, 8, 15.9));
        // Up by a quarter of a step for each good over: the balance lies at 20 % of overs lost.
        assertEquals(3, after(policy, 3, 0, 15.9));
        assertEquals(4, after(policy, 3, 0, 15.9));
    }

    @Test
    void snrLookupSinksWhileNoReportComes() {
        SpeedPolicy policy = policy(new LadderRules.SnrLookup(1, 0.1, 0, 0, 0));
        assertEquals(4, after(policy, 1, 0, 30));
        assertEquals(3, afterSilence(policy, 4));
        assertEquals(2, afterSilence(policy, 3));
        assertEquals("no report for 2 overs", policy.reason());
        assertEquals(4, after(policy, 2, 0, 30));
    }

    @Test
    void expectedAirtimeWeighsLossAgainstSpeed() {
        SpeedPolicy policy = policy(new LadderRules.ExpectedAirtime(4, 0, 1));
        assertEquals(4, policy.chooseLevel(0));
        // Level 4 brings 80 bytes, level 3 at most 40: six of eight lost is too many, three of eight is not.
        assertEquals(4, after(policy, 4, 3, UNKNOWN));
        assertEquals(3, after(policy, 4, 6, UNKNOWN));
        assertEquals(2, after(policy, 3, 8, UNKNOWN));
        assertEquals(2, after(policy, 2, 0, UNKNOWN));
    }

    @Test
    void expectedAirtimeSamplesOnlyWhatCouldBeBetterAndGivesUpAfterFourFailures() {
        SpeedPolicy policy = policy(new LadderRules.ExpectedAirtime(2, 0.5, 1));
        policy.chooseLevel(0);
        int[] tried = new int[5];
        int level = after(policy, 2, 0, UNKNOWN);
        for (int over = 0; over < 200; over++) {
            tried[level]++;
            level = after(policy, level, level > 2 ? 8 : 1, UNKNOWN);
        }
        assertEquals(0, tried[1]);
        assertEquals(4, tried[3]);
        assertEquals(4, tried[4]);
        assertEquals(192, tried[2]);
    }

    @Test
    void aBeliefAboutTheSnrLinksAllLevels() {
        SpeedPolicy policy = policy(new LadderRules.LatentSnr(2, 16, 0, 0));
        assertEquals(2, policy.chooseLevel(0));
        assertTrue(after(policy, 2, 0, UNKNOWN) >= 3, "a clean over makes higher levels likely");
        assertEquals(4, after(policy, 3, 0, UNKNOWN));
        policy.onSilence(SECOND, 4, 8);
        assertEquals(3, after(policy, 4, 8, UNKNOWN));
        assertEquals(3, after(policy, 3, 0, UNKNOWN));
    }

    @Test
    void aBeliefThatForgetsTriesTheHigherLevelAnew() {
        SpeedPolicy steadfast = policy(new LadderRules.LatentSnr(3, 8, 0, 0));
        SpeedPolicy forgetful = policy(new LadderRules.LatentSnr(3, 8, 1, 0));
        for (SpeedPolicy policy : List.of(steadfast, forgetful)) {
            policy.chooseLevel(0);
            policy.onAcknowledged(SECOND, 3, 8, 0, UNKNOWN);
            policy.onAcknowledged(2 * SECOND, 4, 8, 8, UNKNOWN);
            assertEquals(3, policy.chooseLevel(3 * SECOND));
        }
        assertEquals(3, steadfast.chooseLevel(100 * SECOND));
        assertEquals(4, forgetful.chooseLevel(100 * SECOND));
    }

    @Test
    void aReportedSnrMovesTheBelief() {
        SpeedPolicy policy = policy(new LadderRules.LatentSnr(1, 8, 0, 1));
        policy.chooseLevel(0);
        assertEquals(4, after(policy, 1, 0, 25));
    }

    @Test
    void theYardstickTakesWhatTheOracleExpectsMostOf() {
        LinkParts parts =
                PlainLink.parts(new LadderRules.Omniscient(1), (level, atNanos) -> level == 1 + atNanos % 4 ? 100 : 1);
        SpeedPolicy policy = parts.ladder().policy(parts);
        assertEquals(3, policy.chooseLevel(2));
        assertEquals(1, policy.chooseLevel(4));
    }

    @Test
    void benchCurvesTellNeedsAndLosses() {
        LossCurves curves =
                PlainLink.parts(new LadderRules.Fixed(1), Oracle.SILENT).curves();
        // The waveform's success grows from 0 to 1 over 1 dB around its need.
        assertEquals(10.5, curves.needDb(3, 0), 1e-9);
        assertEquals(10.0, curves.needDb(3, 0.5), 1e-9);
        assertEquals(0.5, curves.loss(3, 10), 1e-9);
        assertEquals(0.4, curves.loss(3, 10.1), 1e-9);
        assertEquals(1, curves.loss(3, -1000));
        assertEquals(0, curves.loss(3, 1000));
    }

    /** Returns the level chosen after each over of 8 frames, given how many of them were lost. */
    private static List<Integer> levelsAfter(SpeedPolicy policy, int... losses) {
        return Arrays.stream(losses)
                .mapToObj(lost -> after(policy, 1, lost, UNKNOWN))
                .toList();
    }

    /** Returns how many good overs in a row it takes to rise above a level. */
    private static int overs(SpeedPolicy policy, int level) {
        int overs = 1;
        while (after(policy, level, 0, UNKNOWN) == level) {
            overs++;
        }
        return overs;
    }

    private static int after(SpeedPolicy policy, int level, int lost, double snrDb) {
        policy.onAcknowledged(SECOND, level, 8, lost, snrDb);
        return policy.chooseLevel(SECOND);
    }

    private static int afterSilence(SpeedPolicy policy, int level) {
        policy.onSilence(SECOND, level, 8);
        return policy.chooseLevel(SECOND);
    }

    private static SpeedPolicy policy(LadderRules rules) {
        return rules.policy(PlainLink.parts(rules, Oracle.SILENT));
    }
}
