package org.ionohaul.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;

final class SignTestStopsTest {
    /** Sizes by the textbook formula: a split of 69:31 needs 52 pairs, 60:40 needs 194 (5 % two-sided, 80 %). */
    @Test
    void theTextbookSizesComeOut() {
        assertEquals(52, SignTestStops.approximatePairs(0.69, 0.05, 0.8));
        assertEquals(52, SignTestStops.approximatePairs(0.31, 0.05, 0.8));
        assertEquals(194, SignTestStops.approximatePairs(0.6, 0.05, 0.8));
    }

    /**
     * At those sizes the exact test asks for 34 of 52 and 112 of 194 pairs (33 and 111 have p above 5 %), so its power is
     * below the formula's 80 %: by the normal distribution with a correction for continuity 76.2 and 76.4 %.
     */
    @Test
    void theExactTestIsALittleWeakerThanTheTextbookFormula() {
        assertEquals(16, leadOf(52));
        assertEquals(30, leadOf(194));
        assertEquals(0.762, SignTestStops.atEnd(52, 0.05).chances(0.69).first(), 0.005);
        assertEquals(0.764, SignTestStops.atEnd(194, 0.05).chances(0.6).first(), 0.005);
    }

    private static int leadOf(int pairs) {
        int lead = 0;
        while (!SignTestStops.atEnd(pairs, 0.05).isEnough(pairs, lead)) {
            lead += 2;
        }
        return lead;
    }

    /** Of 10 pairs 9 must be won for 5 %: p is 0.021, with 8 it is 0.109 (any table of the sign test). */
    @Test
    void theRuleOfOneLookIsTheBinomialDistribution() {
        SignTestStops stops = SignTestStops.atEnd(10, 0.05);
        BinomialDistribution wins = BinomialDistribution.of(10, 0.7);
        SignTestStops.Chances chances = stops.chances(0.7);
        assertEquals(wins.survivalProbability(8), chances.first(), 1e-12);
        assertEquals(wins.cumulativeProbability(1), chances.second(), 1e-12);
        assertEquals(10, chances.meanPairs(), 1e-12);
        assertEquals(22.0 / 1024, stops.chances(0.5).named(), 1e-12);
    }

    /** Two like sides: one of them wins the first four pairs with chance 2 / 16; five pairs can't reach 5 % at all. */
    @Test
    void fourOfFourIsNoProof() {
        assertEquals(0.125, SignTestStops.atLead(4, 4).chances(0.5).named(), 1e-12);
        assertEquals(0, SignTestStops.atEnd(5, 0.05).chances(1).named());
        assertEquals(1, SignTestStops.atEnd(6, 0.05).chances(1).first(), 1e-12);
    }

    /** Gambler's ruin (W. Feller, vol. 1, XIV.2-3): without an end, lead h is reached with chance 1 / (1 + (q / p)^h). */
    @Test
    void aLongRuleByLeadIsTheGamblersRuin() {
        SignTestStops.Chances chances = SignTestStops.atLead(5, 2000).chances(0.6);
        double ruin = Math.pow(0.4 / 0.6, 5);
        assertEquals(1 / (1 + ruin), chances.first(), 1e-9);
        assertEquals(5 * (1 - ruin) / (1 + ruin) / 0.2, chances.meanPairs(), 1e-6);
    }

    /** Armitage, McPherson and Rowe (J. R. Stat. Soc. A 132, 1969): looks repeated at 5 % err far more than 5 %. */
    @Test
    void lookingAfterEveryPairErrsMoreThanItSaysAndTheSafeLeadDoesNot() {
        assertTrue(SignTestStops.atEveryPair(50, 0.05).chances(0.5).named() > 0.1);
        for (int pairs : new int[] {1, 4, 6, 20, 100}) {
            assertTrue(SignTestStops.atSafeLead(pairs, 0.05).chances(0.5).named() <= 0.05, "of " + pairs);
        }
        assertTrue(SignTestStops.atSafeLead(20, 0.05).chances(0.95).first() > 0.9);
    }

    /** The whole procedure again and again, counted; 4 standard errors are allowed. */
    @Test
    void theChancesAreThoseOfRepeatedComparisons() {
        int repetitions = 20_000;
        for (double firstWins : new double[] {0.5, 0.7}) {
            SignTestStops stops = SignTestStops.atSafeLead(30, 0.05);
            UniformRandomProvider chance = new TrialStreams(11, 0).open(Purpose.DECODING, (int) (100 * firstWins));
            int first = 0;
            int second = 0;
            for (int i = 0; i < repetitions; i++) {
                int lead = 0;
                int pairs = 0;
                while (pairs < stops.mostPairs() && (pairs == 0 || !stops.isEnough(pairs, lead))) {
                    lead += chance.nextDouble() < firstWins ? 1 : -1;
                    pairs++;
                }
                if (stops.isEnough(pairs, lead)) {
                    first += lead > 0 ? 1 : 0;
                    second += lead < 0 ? 1 : 0;
                }
            }
            SignTestStops.Chances exact = stops.chances(firstWins);
            assertClose(exact.first(), first, repetitions);
            assertClose(exact.second(), second, repetitions);
        }
    }

    private static void assertClose(double chance, int hits, int repetitions) {
        assertEquals(chance, (double) hits / repetitions, 4 * Math.sqrt(chance * (1 - chance) / repetitions) + 1e-4);
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> SignTestStops.atLead(0, 5));
        assertThrows(IllegalArgumentException.class, () -> SignTestStops.atLead(1, 0));
        assertThrows(IllegalArgumentException.class, () -> SignTestStops.atEnd(5, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> SignTestStops.approximatePairs(0.5, 0.05, 0.8));
    }
}
