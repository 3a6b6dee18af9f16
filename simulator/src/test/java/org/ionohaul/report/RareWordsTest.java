package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class RareWordsTest {
    @ParameterizedTest
    @CsvSource({"0.5, 1 in 2", "0.3, 1 in 3.3", "0.01234, 1 in 81", "0.00012, '1 in 8,300'", "0.0000011, '1 in 910,000'"
    })
    void chancesAreOneInSoMany(double chance, String words) {
        assertEquals(words, RareWords.oneIn(chance));
    }
}
