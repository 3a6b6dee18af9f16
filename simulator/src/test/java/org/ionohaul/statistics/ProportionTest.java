package org.ionohaul.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Intervals for shares, against published examples. */
final class ProportionTest {
    /** 81/263, 15/148 and 1/29 are the examples of R. G. Newcombe, Stat. Med. 17, 1998; computed with scipy. */
    @ParameterizedTest
    @CsvSource({
        "7, 50, .069508, .261862",
        "81, 263, .255289, .366210",
        "15, 148, .062386, .160487",
        "0, 20, 0, .161125",
        "1, 29, .006113, .171755",
        "95, 100, .888250, .978456",
        "100, 100, .963007, 1"
    })
    void wilsonIntervalIsThatOfTheExamples(int hits, int total, double low, double high) {
        Estimate found = new Proportion(hits, total).wilson(0.95);
        assertEquals(low, found.low(), 5e-7);
        assertEquals(high, found.high(), 5e-7);
    }

    /** 7/50: documentation of scipy's binomtest; the others computed with it. */
    @ParameterizedTest
    @CsvSource({
        "7, 50, .058192, .267396",
        "81, 263, .252737, .367622",
        "15, 148, .057844, .161650",
        "0, 20, 0, .168433",
        "1, 29, .000873, .177644",
        "95, 100, .887165, .983568",
        "100, 100, .963783, 1"
    })
    void exactIntervalIsThatOfTheExamples(int hits, int total, double low, double high) {
        Estimate found = new Proportion(hits, total).exact(0.95);
        assertEquals(low, found.low(), 5e-7);
        assertEquals(high, found.high(), 5e-7);
    }

    /** Documentation of scipy's binomtest. */
    @Test
    void exactIntervalAgreesToTheLastDigits() {
        Estimate found = new Proportion(7, 50).exact(0.95);
        assertEquals(0.05819170033997342, found.low(), 1e-12);
        assertEquals(0.26739600249700846, found.high(), 1e-12);
    }

    @Test
    void impossibleCountsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Proportion(3, 2));
        assertThrows(IllegalArgumentException.class, () -> new Proportion(-1, 2));
        assertThrows(IllegalArgumentException.class, () -> new Proportion(0, 0));
    }

    @Test
    void noIntervalReachesBeyondZeroOrOneByRounding() {
        for (int total = 1; total <= 300; total++) {
            assertTrue(new Proportion(total, total).wilson(0.95).high() <= 1, "all of " + total);
            assertTrue(new Proportion(0, total).wilson(0.95).low() >= 0, "none of " + total);
        }
    }
}
