package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The presets against the tables of the Recommendations. */
final class FadingConditionTest {
    /** ITU-R F.1487 (2000), Annex 3, and ITU-R F.520: differential delay in ms, frequency spread (2 sigma) in Hz. */
    @ParameterizedTest
    @CsvSource({
        "low-latitude-quiet, 0.5, 0.5",
        "low-latitude-moderate, 2, 1.5",
        "low-latitude-disturbed, 6, 10",
        "mid-latitude-quiet, 0.5, 0.1",
        "mid-latitude-moderate, 1, 0.5",
        "mid-latitude-disturbed, 2, 1",
        "mid-latitude-disturbed-nvis, 7, 1",
        "high-latitude-quiet, 1, 0.5",
        "high-latitude-moderate, 3, 10",
        "high-latitude-disturbed, 7, 30",
        "good, 0.5, 0.1",
        "moderate, 1, 0.5",
        "poor, 2, 1",
        "flutter, 0.5, 10"
    })
    void conditionsAreThoseOfTheTables(String key, double delayMillis, double spreadHz) {
        List<PropagationPath> paths = condition(key).paths();
        assertEquals(
                List.of(
                        new PropagationPath(0, 0, 0, spreadHz),
                        new PropagationPath(delayMillis / 1000, 0, 0, spreadHz)),
                paths);
    }

    @Test
    void noRowIsMissingOrAddedAndOneMoreConditionDoesNotFade() {
        assertEquals(15, FadingCondition.values().length);
        assertEquals(List.of(new PropagationPath(0, 0, 0, 0)), condition("flat").paths());
    }

    private static FadingCondition condition(String key) {
        return List.of(FadingCondition.values()).stream()
                .filter(condition -> condition.key().equals(key))
                .findFirst()
                .orElseThrow();
    }
}
