package org.ionohaul.rendering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.ionohaul.statistics.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class WordsTest {
    @ParameterizedTest
    @CsvSource({
        "111, 2 min",
        "110, 110 s",
        "1, 10 s",
        "61, 70 s",
        "120, 2 min",
        "120.1, 2 min 30 s",
        "245, 4 min 30 s",
        "571, 10 min",
        "601, 11 min",
        "1020, 17 min"
    })
    void aPlanIsRoundedUpToTheSafeSide(double seconds, String expected) {
        assertEquals(expected, TimeText.plan(seconds));
    }

    @ParameterizedTest
    @CsvSource({"90, 90 s", "1200, 20 min", "3600, 1 h", "5400, 90 min", "9000, 2 h 30 min", "7200, 2 h"})
    void aGivenTimeReadsAsItWasWritten(double seconds, String expected) {
        assertEquals(expected, TimeText.given(seconds));
    }

    /** Half a second is where a second begins, either way, so that nothing has lost its sign that is told. */
    @ParameterizedTest
    @CsvSource({"260, 4 min 20 s", "-12, -12 s", "-0.5, -1 s", "-0.49, 0 s", "0.5, 1 s", "-59.6, -1 min"})
    void aDifferenceHasItsSign(double seconds, String expected) {
        assertEquals(expected, TimeText.signed(seconds));
    }

    @Test
    void aRangeOfDifferencesIsToldWhereItHasEndsThatDiffer() {
        assertEquals("-12 s to 4 min 20 s", TimeText.range(-12, 260));
        assertEquals(" (-12 s to 4 min 20 s)", TimeText.inBrackets(-12, 260));
        assertEquals("", TimeText.range(-12.4, -11.6));
        assertEquals("", TimeText.inBrackets(-12.4, -11.6));
        assertEquals("", TimeText.range(Double.NEGATIVE_INFINITY, 260));
        assertEquals("", TimeText.range(-12, Double.POSITIVE_INFINITY));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void aLengthOfTimeIsFiniteAndNotNegative(double seconds) {
        assertThrows(IllegalArgumentException.class, () -> TimeText.length(seconds));
    }

    @ParameterizedTest
    @CsvSource({
        "0.9, 9 of 10",
        "0.897, 9 of 10",
        "0.83, 83 of 100",
        "1, more than 99 of 100",
        "0.999, more than 99 of 100",
        "0, fewer than 1 of 100",
        "0.5, 5 of 10"
    })
    void oddsAreNeverCertain(double probability, String expected) {
        assertEquals(expected, OddsText.odds(probability));
    }

    @ParameterizedTest
    @CsvSource({"0, 0 %", "0.004, <1 %", "0.83, 83 %", "0.997, >99 %", "1, 100 %"})
    void percentagesKeepTheEndsApart(double probability, String expected) {
        assertEquals(expected, OddsText.percent(probability));
    }

    @Test
    void aFewGoodTrialsAreNoGreatOdds() {
        assertEquals("all simulated", OddsText.simulated(new Estimate(1, 0.34, 1)));
        assertEquals("more than 99 of 100", OddsText.simulated(new Estimate(1, 0.996, 1)));
        assertEquals("none of the simulated", OddsText.simulated(new Estimate(0, 0, 0.66)));
        assertEquals("88 of 100", OddsText.simulated(new Estimate(0.88, 0.86, 0.9)));
    }

    @Test
    void aRangeOfChancesIsNeverRoundedIntoCertainty() {
        assertEquals("80-85 %", OddsText.percentRange(0.801, 0.849));
        assertEquals(">99 to 100 %", OddsText.percentRange(0.9962, 1));
        assertEquals("0 to <1 %", OddsText.percentRange(0, 0.0038));
    }

    @ParameterizedTest
    @CsvSource({"1, 1 byte", "812, 812 bytes", "1000, 1 kB", "2100, 2.1 kB", "64000, 64 kB", "1250000, 1.25 MB"})
    void sizesHaveThreeFiguresAtMost(long bytes, String expected) {
        assertEquals(expected, SizeText.size(bytes));
    }

    @ParameterizedTest
    @CsvSource({"9616.4, 9.6 kB", "1049, 1 kB", "7, 7 bytes", "123456, 120 kB", "995, 1 kB"})
    void sizesThatAreNotKnownBetterHaveTwoFigures(double bytes, String expected) {
        assertEquals(expected, SizeText.about(bytes));
    }

    @Test
    void noChanceLiesBeyondOne() {
        assertThrows(IllegalArgumentException.class, () -> OddsText.odds(1.01));
        assertThrows(IllegalArgumentException.class, () -> OddsText.percent(Double.NaN));
    }

    @Test
    void aLengthThatMustNotBeTooShortIsNeverRoundedDown() {
        assertEquals("1 h 1 min", TimeText.lengthRoundedUp(3625));
        assertEquals("1 h", TimeText.lengthRoundedUp(3600));
        assertEquals("1 h", TimeText.lengthRoundedUp(3599.2));
        assertEquals("4 min 21 s", TimeText.lengthRoundedUp(260.1));
    }
}
