package org.ionohaul.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ionohaul.session.SessionResult;
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
                "0..6 /h : 3 | 0 /h,3 /h,6 /h"
            })
    void aRangeIsSpreadEvenly(String text, String values) {
        assertEquals(
                List.of(values.split(",", -1)),
                KeySweep.parse("key", text).orElseThrow().values());
    }

    @ParameterizedTest
    @ValueSource(strings = {"6 dB", "12 dB ± 3 dB", "true", "18:14", "modes/x..y"})
    void aSingleValueIsNoSweep(String text) {
        assertEquals(Optional.empty(), KeySweep.parse("key", text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"6 dB..18 Hz", "1..9 : 1", "1..9 : 100", "5..5"})
    void aRangeThatMakesNoSenseIsRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> KeySweep.parse("key", text));
    }

    @Test
    void combinationsRunThroughTheLastKeyFastest() {
        assertEquals(
                List.of(List.of("1", "a"), List.of("1", "b"), List.of("2", "a"), List.of("2", "b")),
                Variation.combinations(
                        List.of(new KeySweep("x", List.of("1", "2")), new KeySweep("y", List.of("a", "b")))));
    }

    /** Twenty of forty trials become 10 s quicker, the others stay: 20 against none is beyond chance. */
    @Test
    void aSmallChangeShowsUnderTheSameSky() {
        StudyResult before = InventedStudy.oneFileStudy(2000, List.of("hare"), List.of(sessions(0)));
        StudyResult after = InventedStudy.oneFileStudy(2000, List.of("hare"), List.of(sessions(10)));
        PairedEffect effect =
                VariationPoint.of(List.of("x"), after, before).effects().get(0).get(0);
        assertEquals(20, effect.quicker().hits());
        assertEquals(0, effect.slower().hits());
        assertEquals(-10, effect.medianChangeSeconds().value(), 1e-9);
        // Two-sided sign test of 20 to none: 2 / 2^20.
        assertEquals(2 / 1048576.0, effect.pValue(), 1e-12);
    }

    private static List<SessionResult> sessions(double savedSeconds) {
        return IntStream.range(0, 40)
                .mapToObj(i -> InventedStudy.delivered(100 + 5 * i - (i % 2 == 0 ? savedSeconds : 0)))
                .toList();
    }
}
