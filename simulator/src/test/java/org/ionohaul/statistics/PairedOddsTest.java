package org.ionohaul.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

final class PairedOddsTest {
    /**
     * R. J. Connor (Biometrics 43, 1987) and J. M. Lachin (Stat. Med. 11, 1992) give one formula; with chances of 0.25 and 0.125,
     * 5 % two-sided and 90 % power it is (1.959964 x 0.612372 + 1.281552 x 0.599479)^2 / 0.125^2 = 247.997, the 248 that the
     * manual of the R package MESS shows for this example (from memory; the sum by hand).
     */
    @Test
    void theTextbookSizeOfMcNemarsTestComesOut() {
        assertEquals(248, new PairedOdds(0.25, 0.125).approximatePairs(0.05, 0.9));
        assertEquals(248, new PairedOdds(0.125, 0.25).approximatePairs(0.05, 0.9));
    }

    /** Where every pair is won it is the sign test's: 52 pairs for 69:31, 194 for 60:40 at 5 % and 80 % power. */
    @Test
    void withoutTiesItIsTheSignTest() {
        assertEquals(52, new PairedOdds(0.69, 0.31).approximatePairs(0.05, 0.8));
        assertEquals(194, new PairedOdds(0.6, 0.4).approximatePairs(0.05, 0.8));
        assertEquals(
                SignTestStops.atEnd(52, 0.05).chances(0.69).first(), new PairedOdds(0.69, 0.31).named(52, 0.05), 1e-12);
        assertEquals(
                SignTestStops.atEnd(52, 0.05).chances(0.69).second(),
                new PairedOdds(0.31, 0.69).named(52, 0.05),
                1e-12);
    }

    /** Every outcome of eight pairs, by the multinomial distribution; six wins of six, 7 of 7 and 8 of 8 are enough. */
    @Test
    void tiesAreWeighedByTheirChance() {
        double first = 0.6;
        double second = 0.1;
        double named = 0;
        for (int wins = 6; wins <= 8; wins++) {
            named += choose(8, wins) * Math.pow(first, wins) * Math.pow(1 - first - second, 8 - wins);
        }
        // Of eight won pairs seven do not suffice: p is 18 / 256.
        assertEquals(named, new PairedOdds(first, second).named(8, 0.05), 1e-12);
    }

    private static double choose(int of, int count) {
        return count == 0 ? 1 : choose(of - 1, count - 1) * of / count;
    }

    @Test
    void fromTheNumberNeededOnThePowerStays() {
        PairedOdds odds = new PairedOdds(0.69, 0.31);
        int needed = odds.pairsNeeded(0.05, 0.8, 200).orElseThrow();
        assertTrue(odds.named(needed - 1, 0.05) < 0.8);
        for (int pairs = needed; pairs <= 200; pairs++) {
            assertTrue(odds.named(pairs, 0.05) >= 0.8, "of " + pairs);
        }
        assertTrue(needed > 52, "the exact test needs more than the textbook says: " + needed);
    }

    @Test
    void whatNoNumberTellsHasNone() {
        assertEquals(OptionalInt.empty(), new PairedOdds(0.5, 0.5).pairsNeeded(0.05, 0.8, 200));
        assertEquals(OptionalInt.empty(), new PairedOdds(0.4, 0.6).pairsNeeded(0.05, 0.8, 200));
        assertEquals(OptionalInt.empty(), new PairedOdds(0.55, 0.45).pairsNeeded(0.05, 0.8, 200));
        assertEquals(0.5, new PairedOdds(0, 0).firstOfDecided());
        assertEquals(0, new PairedOdds(0, 0).named(20, 0.05));
    }

    @Test
    void chancesMustBeChances() {
        assertThrows(IllegalArgumentException.class, () -> new PairedOdds(0.7, 0.4));
        assertThrows(IllegalArgumentException.class, () -> new PairedOdds(-0.1, 0.4));
        assertThrows(IllegalArgumentException.class, () -> new PairedOdds(0.5, 0.5).approximatePairs(0.05, 0.8));
        assertThrows(IllegalArgumentException.class, () -> new PairedOdds(0.6, 0.4).pairsNeeded(0.05, 1, 50));
    }
}
