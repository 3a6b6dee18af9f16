package org.ionohaul.whatif;

import static org.ionohaul.whatif.InventedPoints.clear;
import static org.ionohaul.whatif.InventedPoints.nothing;
import static org.ionohaul.whatif.InventedPoints.open;
import static org.ionohaul.whatif.InventedPoints.variation;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.ionohaul.analysis.CasePoint;
import org.ionohaul.study.KeySweep;
import org.junit.jupiter.api.Test;

/** The sentences on a variation: which mode is best where, and what a setting changes. */
final class VariationWordsTest {
    private static final KeySweep KEY = new KeySweep("near.snr", List.of("3 dB", "6 dB", "9 dB", "12 dB"));
    private static final KeySweep OTHER = new KeySweep("distance", List.of("90 km", "400 km"));

    private static String best(List<KeySweep> sweeps, CasePoint... points) {
        List<String> sentences = new VariationWords(variation(sweeps, List.of(points))).sentences(1);
        return sentences.get(sentences.size() - 1);
    }

    @Test
    void neighboursOfWhichTheSameIsSaidAreToldTogether() {
        assertEquals(
                "At 3 dB: no mode gets anything through; at 6 dB to 9 dB: Quick is best; at 12 dB: best is Quick or"
                        + " Tough, which can't be told apart.",
                best(List.of(KEY), nothing(), clear(0), clear(0), open()));
        assertEquals(
                "At 3 dB: Quick is best; at 6 dB to 9 dB: Tough is best; at 12 dB: Quick is best.",
                best(List.of(KEY), clear(0), clear(1), clear(1), clear(0)));
    }

    @Test
    void whatHoldsEverywhereIsSaidOnce() {
        assertEquals("At every value: Tough is best.", best(List.of(KEY), clear(1), clear(1), clear(1), clear(1)));
        assertEquals("At every value done: Tough is best.", best(List.of(KEY), clear(1), clear(1)));
        assertEquals("At 3 dB: Tough is best.", best(List.of(KEY), clear(1)));
    }

    @Test
    void ofTwoKeysItIsCountedAtHowManyCombinations() {
        KeySweep two = new KeySweep("near.snr", List.of("3 dB", "6 dB"));
        assertEquals(
                "Of 4 combinations: Tough is best at 3; Quick is best at 1.",
                best(List.of(two, OTHER), clear(1), clear(0), clear(1), clear(1)));
    }

    /** With a second key the end of the first is furthest along it while the second stays as it is at first. */
    @Test
    void eachKeyIsTurnedAloneAndTheOthersValueIsNamed() {
        KeySweep two = new KeySweep("near.snr", List.of("3 dB", "6 dB"));
        assertEquals(
                List.of(
                        "With SNR at Weir Cottage = 6 dB instead of 3 dB (length of the path = 90 km), not one trial differs for Tough.",
                        "With length of the path = 400 km instead of 90 km (SNR at Weir Cottage = 3 dB), not one trial differs for Tough.",
                        "At every value: Tough is best."),
                new VariationWords(variation(List.of(two, OTHER), List.of(clear(1), clear(1), clear(1), clear(1))))
                        .sentences(0));
    }

    /** Where nothing arrives at first, the change is told of the mode that is best at last. */
    @Test
    void theModeToldOfIsOneThatGetsThrough() {
        assertEquals(
                "With SNR at Weir Cottage = 6 dB instead of 3 dB, not one trial differs for Tough.",
                new VariationWords(variation(List.of(KEY), List.of(nothing(), clear(1))))
                        .sentences(0)
                        .get(0));
        assertEquals(
                "With SNR at Weir Cottage = 6 dB instead of 3 dB, not one trial differs for Quick.",
                new VariationWords(variation(List.of(KEY), List.of(clear(0), clear(1))))
                        .sentences(0)
                        .get(0));
    }

    @Test
    void whatTheNumbersRestOnIsSaidAndWhatIsMissing() {
        VariationWords words = new VariationWords(variation(List.of(KEY), List.of(clear(0), clear(1))));
        assertEquals("PARTIAL: interrupted after 2 of 4 values.", words.partial());
        assertEquals(
                "100 simulated trials a value, the same skies for every value and mode, seed 4711. Varied: SNR at"
                        + " Weir Cottage (near.snr).",
                words.basis());
    }
}
