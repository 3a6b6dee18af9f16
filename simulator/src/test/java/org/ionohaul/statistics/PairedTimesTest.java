package org.ionohaul.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Two settings under the same conditions. */
final class PairedTimesTest {
    private static final double NEVER = Double.POSITIVE_INFINITY;

    /** P. Armitage and G. Berry's example as worked in the StatsDirect help: 20/12/2/16. */
    @Test
    void discordantPairsGiveTheTextbookTest() {
        DiscordantPairs pairs = new DiscordantPairs(12, 2);
        assertEquals(0.012939, pairs.exactPValue(), 5e-7);
    }

    /** Example of stat-tools.xyz: 12 against 5. */
    @Test
    void anUndecidedSplitHasALargePValue() {
        DiscordantPairs pairs = new DiscordantPairs(12, 5);
        assertEquals(0.1435, pairs.exactPValue(), 5e-5);
    }

    /**
     * Hyper-responsive airways before and after a transplant, 1 and 7 discordant of 21 pairs: M. W. Fagerland, S. Lydersen
     * and P. Laake, Stat. Med. 33:2850, 2014 (from memory) give -0.508 to -0.013; by hand -6/23 less and plus 1.95996
     * sqrt((10/23 - (6/23)^2) / 23).
     */
    @Test
    void theDifferenceOfTwoSharesHasAnInterval() {
        Estimate difference = new DiscordantPairs(1, 7).shareDifference(21, 0.95);
        assertEquals(-6 / 21.0, difference.value(), 1e-12);
        assertEquals(-0.508, difference.low(), 5e-4);
        assertEquals(-0.013, difference.high(), 5e-4);
    }

    @Test
    void aDifferenceStaysBetweenAllAndNone() {
        assertEquals(1, new DiscordantPairs(10, 0).shareDifference(10, 0.95).high());
        Estimate none = new DiscordantPairs(0, 0).shareDifference(100, 0.95);
        assertEquals(0, none.value());
        assertTrue(none.low() < 0 && none.high() > 0, none::toString);
        assertThrows(IllegalArgumentException.class, () -> new DiscordantPairs(2, 2).shareDifference(3, 0.95));
    }

    @Test
    void withoutPairsNothingIsTold() {
        assertEquals(1, new DiscordantPairs(0, 0).exactPValue());
    }

    @Test
    void everyTrialIsWonTiedOrNeither() {
        PairedTimes times = PairedTimes.of(new double[] {1, 5, NEVER, NEVER, 3}, new double[] {2, NEVER, 7, NEVER, 3});
        assertEquals(new Proportion(2, 5), times.firstBefore());
        assertEquals(new Proportion(1, 5), times.secondBefore());
        assertEquals(new Proportion(1, 5), times.neither());
        assertEquals(new DiscordantPairs(2, 1), times.signs());
    }

    @Test
    void theLeadIsInfiniteWhereJustOneArrives() {
        PairedTimes times = PairedTimes.of(new double[] {1, 5, 4, NEVER}, new double[] {2, NEVER, NEVER, NEVER});
        assertEquals(NEVER, times.lead(0.5, 0.95).value());
        assertEquals(1, times.lead(0.3, 0.95).value());
    }

    @Test
    void aDeadlineIsComparedOverThePairsThatDisagree() {
        PairedTimes times = PairedTimes.of(new double[] {10, 11, 30, 9}, new double[] {20, 10, 9, NEVER});
        assertEquals(new DiscordantPairs(2, 1), times.deadlineKeptByOne(15));
    }

    @Test
    void eachSideMayHaveItsOwnDeadline() {
        PairedTimes times = PairedTimes.of(new double[] {10, 11, 30, 9}, new double[] {20, 10, 9, NEVER});
        assertEquals(new DiscordantPairs(1, 2), times.deadlineKeptByOne(10, 20));
    }

    /** Differences 1, 1, 1, 5: variance 4; times 1, 2, 3, 4 and 2, 3, 4, 9: variances 5/3 and 29/3. By hand. */
    @Test
    void commonConditionsSharpenAComparison() {
        PairedTimes times = PairedTimes.of(new double[] {1, 2, 3, 4, NEVER}, new double[] {2, 3, 4, 9, 5});
        assertEquals(4 / (5 / 3.0 + 29 / 3.0), times.varianceRatio(), 1e-12);
    }

    @Test
    void furthestAheadIsWhereTheOtherNeverCame() {
        double[] first = {1, 2, NEVER, 3};
        double[] second = {9, NEVER, 1, 2};
        assertEquals(1, PairedTimes.of(first, second).furthestAhead().orElseThrow());
        assertEquals(2, PairedTimes.of(second, first).furthestAhead().orElseThrow());
        assertTrue(PairedTimes.of(first, first).furthestAhead().isEmpty());
    }

    @Test
    void timesThatAreNoPairsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> PairedTimes.of(new double[2], new double[3]));
        assertThrows(IllegalArgumentException.class, () -> PairedTimes.of(new double[0], new double[0]));
    }
}
