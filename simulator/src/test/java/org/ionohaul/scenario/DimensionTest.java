package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Quantities as people write them; the expected numbers are the units' own definitions (SI, IEC 80000-13). */
final class DimensionTest {
    @ParameterizedTest
    @CsvSource({
        "20 min, 1200",
        "'1,5 s', 1.5",
        "1h30, 5400",
        "2 hours 5 mins, 7500",
        "'1 500 s', 1500",
        "1 h 30 min, 5400",
        "1h30min, 5400",
        "350 ms, 0.35",
        "20ms, 0.02",
        "12 µs, 0.000012",
        "12 us, 0.000012",
        "0.5 s, 0.5",
        "0 s, 0",
        "'  2 h ', 7200"
    })
    void timesAreReadInSeconds(String text, double seconds) throws WrongValue {
        assertEquals(seconds, Dimension.TIME.read(text));
    }

    @ParameterizedTest
    @CsvSource({
        "64 kB, 64000",
        "60 000 bytes, 60000",
        "'1,500,000 B', 1500000",
        "1.500.000 B, 1500000",
        "1.55 kB, 1550",
        "64 KiB, 65536",
        "1.5 MB, 1500000",
        "1 MiB, 1048576",
        "90 B, 90"
    })
    void sizesAreReadInBytes(String text, double bytes) throws WrongValue {
        assertEquals(bytes, Dimension.SIZE.read(text));
    }

    @ParameterizedTest
    @CsvSource({
        "14 dB, 14",
        "'14,5 dB', 14.5",
        "–3 dB, -3",
        "14.125 dB, 14.125",
        "-3.5 dB, -3.5",
        "−3 dB, -3",
        "+2 dB, 2"
    })
    void ratiosMayBeNegativeWithEitherMinus(String text, double decibels) throws WrongValue {
        assertEquals(decibels, Dimension.RATIO.read(text));
    }

    @ParameterizedTest
    @CsvSource({
        "2.4 kHz, 2400",
        "7.055 MHz, 7055000",
        "'7,1 MHz', 7100000",
        "3.6 MHz, 3600000",
        "-0.5 Hz, -0.5",
        "200 mHz, 0.2"
    })
    void frequenciesAreReadInHertz(String text, double hertz) throws WrongValue {
        assertEquals(hertz, Dimension.FREQUENCY.read(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "min",
                "20",
                "1h90",
                "1.2.3 s",
                "20 min s",
                "20 min 5",
                "NaN s",
                "1e3 s",
                "1..2 s",
                "-1 s",
                "--1 s"
            })
    void whatIsNoTimeIsRefused(String text) {
        assertThrows(WrongValue.class, () -> Dimension.TIME.read(text));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "14 Hz | \"14 Hz\" is a frequency, not a ratio in dB",
                "14 db | unit \"db\" in \"14 db\" is unknown",
                "14 | \"14\" has no unit",
                "loud | \"loud\" is not a ratio in dB",
                "7 min | \"7 min\" is a time, not a ratio in dB"
            })
    void refusalsSayWhatTheTextIs(String text, String message) {
        WrongValue refusal = assertThrows(WrongValue.class, () -> Dimension.RATIO.read(text));
        assertEquals(message, refusal.message());
    }

    @ParameterizedTest
    @CsvSource({"5 KB, kB", "5 b, B", "5 kib, KiB"})
    void anotherCaseOfAUnitIsRecognised(String text, String meant) {
        WrongValue refusal = assertThrows(WrongValue.class, () -> Dimension.SIZE.read(text));
        assertEquals("did you mean \"" + meant + "\"?", refusal.remedy());
    }

    /** Not knowing which is meant, the program asks. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "60.000 B | 60 B | 60000 B",
                "60,000 B | 60 B | 60000 B",
                "1.234 kB | 1234 B | 1234 kB",
                "38.500 kB | 38.5 kB | 38500 kB"
            })
    void aSizeThatCanBeReadInTwoWaysIsRefusedWithBoth(String text, String small, String large) {
        WrongValue refusal = assertThrows(WrongValue.class, () -> Dimension.SIZE.read(text));
        assertEquals("\"" + text + "\" can be read in two ways: " + small + " or " + large, refusal.message());
        assertEquals("write \"" + small + "\" or \"" + large + "\"", refusal.remedy());
    }
}
