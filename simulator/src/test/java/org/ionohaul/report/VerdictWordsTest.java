package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.ionohaul.analysis.StudySummary;
import org.junit.jupiter.api.Test;

/** Expected numbers are reckoned by hand from the rule of {@link FabricatedStudy}. */
final class VerdictWordsTest {
    private static String sentences(int trials, int quickDelivers) {
        return VerdictWords.sentences(StudySummary.of(FabricatedStudy.result(trials, quickDelivers))
                .cases()
                .get(0));
    }

    @Test
    void whereMoreArrivesTheFailureIsNamed() {
        assertEquals(
                "Tough beats Quick because it delivers on 100 % of trials against 80 %. When Quick fails, it loses its"
                        + " link and gives up (20 % of trials).",
                sentences(100, 80));
    }

    /** Six trials of which only the other mode gets through: p = 2 / 64, though the intervals overlap. */
    @Test
    void aFewTrialsThatOnlyOneSurvivesAreEnoughForThePairedTest() {
        assertEquals(
                "Tough beats Quick because it delivers on 100 % of trials against 94 %. When Quick fails, it loses its"
                        + " link and gives up (6 % of trials).",
                sentences(100, 94));
    }

    /**
     * Five of 100 may be chance (p = 0.06), the ten that keep 15 min are not. Of the 95 trials that both get through,
     * Quick spends a third of 484 s on new payload, Tough a quarter of 439 s.
     */
    @Test
    void whatMayBeChanceIsNotCalledFailure() {
        assertEquals(
                "Tough beats Quick mostly because it spends 0:52 less a trial on new payload, where both deliver.",
                sentences(100, 95));
    }
}
