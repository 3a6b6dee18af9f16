package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class WrittenNumberTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12 | 12",
                "-7,1 | -7.1",
                "7.10 | 7.10",
                "+0.500 | 0.500",
                "−3 | -3",
                "1 500 | 1500",
                "1 500,25 | 1500.25",
                "1’500’000 | 1500000",
                "1_000 | 1000",
                "1,500,000 | 1500000",
                "1.500,5 | 1500.5",
                "1,500.5 | 1500.5",
                "1.500 | 1.500 1500",
                "12,345 | 12.345 12345"
            })
    void aNumberHasTheMeaningsThatPeopleGiveIt(String text, String meanings) {
        assertEquals(
                Stream.of(meanings.split(" ", -1)).map(BigDecimal::new).toList(),
                WrittenNumber.of(text).meanings());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "x", "1.2.3", "1,23,456", "1 50", "1..2", "1.", ".5", "--1", "1e3", "1.500.00"})
    void whatIsNoNumberHasNone(String text) {
        assertEquals(List.of(), WrittenNumber.of(text).meanings());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"1000 | 1000", "1k | 1000", "1.5 K | 1500", "1,000 | 1000", "1.000 | 1000", "10 000 | 10000"})
    void aCountMayHaveThousands(String text, long count) {
        assertEquals(Optional.of(count), WrittenNumber.whole(text).map(BigDecimal::longValueExact));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.5", "many", "1kk", "1.0005k", "1,500k", ""})
    void whatIsNoCountIsNone(String text) {
        assertEquals(Optional.empty(), WrittenNumber.whole(text));
    }
}
