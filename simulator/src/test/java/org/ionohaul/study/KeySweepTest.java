package org.ionohaul.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.ionohaul.limits.OutOfRange;
import org.ionohaul.limits.TestedRange;
import org.ionohaul.scenario.WrongValue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Ranges of values as people write them. */
final class KeySweepTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "6 dB..18 dB | 6 dB,8 dB,10 dB,12 dB,14 dB,16 dB,18 dB",
                "6..18 dB | 6 dB,8 dB,10 dB,12 dB,14 dB,16 dB,18 dB",
                "6 dB .. 18 dB : 3 | 6 dB,12 dB,18 dB",
                "-97 dBm..-91 dBm : 3 | -97 dBm,-94 dBm,-91 dBm",
                "1..8 | 1,2,3,5,6,7,8",
                "1..3 | 1,2,3",
                "18..6 dB : 2 | 18 dB,6 dB",
                "0.5 Hz..1.5 Hz : 3 | 0.5 Hz,1 Hz,1.5 Hz",
                "10 %..20 % : 2 | 10 %,20 %",
                "6..7 dB : 3 | 6 dB,6.5 dB,7 dB",
                "1..8 kB : 4 | 1 kB,3.33 kB,5.67 kB,8 kB",
                "S5..S8 | S5,S6,S7,S8",
                "s8..s5 | S8,S7,S6,S5",
                "S3..S9 : 3 | S3,S6,S9",
                "6,5..7,5 dB : 3 | 6.5 dB,7 dB,7.5 dB",
                "6-18 dB : 3 | 6 dB,12 dB,18 dB",
                "6 to 18 dB : 3 | 6 dB,12 dB,18 dB",
                "0..6 /h : 3 | 0 /h,3 /h,6 /h"
            })
    void aRangeIsSpreadEvenly(String text, String values) throws WrongValue {
        assertEquals(
                List.of(values.split(",", -1)),
                KeySweep.parse("key", text).orElseThrow().values());
    }

    @ParameterizedTest
    @ValueSource(strings = {"6 dB", "12 dB ± 3 dB", "true", "18:14", "modes/x..y"})
    void aSingleValueIsNoSweep(String text) throws WrongValue {
        assertEquals(Optional.empty(), KeySweep.parse("key", text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "6 dB..18 Hz",
                "1..9 : 1",
                "1..9 : 100",
                "5..5",
                "1..9 : 99999999999",
                "a | a",
                "a |",
                "S5..S9+10"
            })
    void aRangeThatMakesNoSenseIsRefused(String text) {
        assertThrows(WrongValue.class, () -> KeySweep.parse("key", text));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "quiet-band | busy-evening; quiet-band,busy-evening",
                "S5|S7 |S9+10; S5,S7,S9+10",
                "true|false; true,false"
            })
    void aListIsTakenAsItStands(String text, String values) throws WrongValue {
        assertEquals(
                List.of(values.split(",", -1)),
                KeySweep.parse("key", text).orElseThrow().values());
    }

    @Test
    void valuesWithOneUnitHavePlacesOnAnAxis() {
        assertEquals(List.of(6.0, -1.5), new KeySweep("key", List.of("6 dB", "-1.5 dB")).numbers());
        assertEquals(List.of(4.0, 8.0), new KeySweep("key", List.of("4", "8")).numbers());
        assertEquals(List.of(), new KeySweep("key", List.of("1 min", "90 s")).numbers());
        assertEquals(List.of(), new KeySweep("key", List.of("S5", "S7")).numbers());
    }

    @Test
    void aSweepHasTwoToNinetyNineValuesNoTwoAlike() {
        TestedRange.ofCount(
                "values",
                2,
                99,
                count -> new KeySweep(
                        "key",
                        LongStream.rangeClosed(1, count)
                                .mapToObj(Long::toString)
                                .toList()));
        assertThrows(OutOfRange.class, () -> new KeySweep("key", List.of("1", "2", "1")));
        assertThrows(OutOfRange.class, () -> new KeySweep("key", List.of("1", "2", " ")));
        KeySweep sweep = new KeySweep("key", List.of("1", "2", "5"));
        assertEquals("1", sweep.first());
        assertEquals("5", sweep.last());
    }

    @Test
    void aRangeHasTwoToNinetyNineValuesIfSaidSo() throws WrongValue {
        assertEquals(
                List.of("1", "99"),
                KeySweep.parse("key", "1..99 : 2").orElseThrow().values());
        assertEquals(
                99, KeySweep.parse("key", "1..99 : 99").orElseThrow().values().size());
        assertThrows(WrongValue.class, () -> KeySweep.parse("key", "1..99 : 1"));
        assertThrows(WrongValue.class, () -> KeySweep.parse("key", "1..200 : 100"));
    }
}
