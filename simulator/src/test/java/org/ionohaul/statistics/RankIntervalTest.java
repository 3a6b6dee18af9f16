package org.ionohaul.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Distribution-free intervals for quantiles, against tables. */
final class RankIntervalTest {
    /**
     * Sizes 10 to 20: tables of nonparametric intervals for the median, in per cent to one decimal (97.9, 96.5, 98.8,
     * 95.9). Size 35: example of real-statistics.com. The others: binomial distribution, computed with scipy.
     */
    @ParameterizedTest
    @CsvSource({
        "10, 0.5, 2, 9, 0.978516",
        "15, 0.5, 4, 12, 0.964844",
        "20, 0.5, 5, 16, 0.988182",
        "20, 0.5, 6, 15, 0.958611",
        "35, 0.5, 17, 19, 0.264121",
        "100, 0.9, 84, 96, 0.955690",
        "100, 0.95, 90, 99, 0.951446",
        "200, 0.9, 171, 188, 0.951627",
        "1000, 0.9, 881, 919, 0.954907"
    })
    void coverageIsThatOfTheBinomialTable(int size, double probability, int lower, int upper, double coverage) {
        assertEquals(
                coverage, RankInterval.between(lower, upper, size, probability).coverage(), 5e-7);
    }

    /**
     * Same sources. The table's [90, 99] of 100 at 0.95 and [171, 188] of 200 at 0.9 are left out: they miss above more
     * often than half of the error allowed, which this choice does not.
     */
    @ParameterizedTest
    @CsvSource({
        "10, 0.5, 2, 9",
        "15, 0.5, 4, 12",
        "20, 0.5, 6, 15",
        "100, 0.9, 84, 96",
        "1000, 0.9, 881, 919",
        "1000, 0.95, 936, 964"
    })
    void chosenRanksAreThoseOfTheTable(int size, double probability, int lower, int upper) {
        RankInterval chosen = RankInterval.of(size, probability, 0.95);
        assertEquals(lower, chosen.lower());
        assertEquals(upper, chosen.upper());
    }

    @Test
    void coverageIsNeverBelowTheConfidence() {
        for (int size = 1; size <= 300; size++) {
            for (double probability : new double[] {0.1, 0.5, 0.9, 0.99}) {
                RankInterval chosen = RankInterval.of(size, probability, 0.95);
                assertTrue(chosen.coverage() >= 0.95 - 1e-12, chosen + " of " + size + " at " + probability);
            }
        }
    }

    /**
     * S. S. Wilks, Ann. Math. Stat. 12, 1941: the smallest number of runs whose largest is an upper limit for the
     * quantile with one-sided confidence; values from 1 - p^n.
     */
    @ParameterizedTest
    @CsvSource({
        "0.9, 0.9, 22",
        "0.9, 0.95, 29",
        "0.9, 0.99, 44",
        "0.95, 0.9, 45",
        "0.95, 0.95, 59",
        "0.95, 0.99, 90",
        "0.99, 0.9, 230",
        "0.99, 0.95, 299",
        "0.99, 0.99, 459"
    })
    @DisplayName("the largest of Wilks's number of runs is an upper limit, and of one run less is not")
    void largestRunIsAnUpperLimitFromWilksNumberOn(double probability, double confidence, int runs) {
        assertTrue(RankInterval.between(0, runs, runs, probability).coverage() >= confidence);
        assertTrue(RankInterval.between(0, runs - 1, runs - 1, probability).coverage() < confidence);
    }

    @Test
    void tooSmallASampleSetsNoUpperLimit() {
        assertEquals(11, RankInterval.of(10, 0.9, 0.95).upper());
    }

    @Test
    void impossibleQuestionsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> RankInterval.of(10, 0, 0.95));
        assertThrows(IllegalArgumentException.class, () -> RankInterval.of(10, Double.NaN, 0.95));
        assertThrows(IllegalArgumentException.class, () -> RankInterval.of(10, 0.5, 1));
        assertThrows(IllegalArgumentException.class, () -> RankInterval.between(3, 3, 10, 0.5));
    }
}
