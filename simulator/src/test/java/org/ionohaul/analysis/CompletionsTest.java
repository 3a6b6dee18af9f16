package org.ionohaul.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.ionohaul.report.FabricatedStudy;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.ModeTrials;
import org.junit.jupiter.api.Test;

/** Times of "Quick", of which trial i is through after 10 (i + 1) s up to trial 94, and never from there on. */
final class CompletionsTest {
    private static final ModeTrials QUICK =
            FabricatedStudy.result().cases().get(0).modes().get(0);

    /** The k-th fiftieth of a hundred trials are two, of 10 (2k + 1) and 10 (2k + 2) s; its middle lies between them. */
    @Test
    void eachOfFiftyStandsForTwoOfAHundred() {
        LikelyTrials likely = LikelyTrials.of(QUICK);
        assertEquals(LikelyTrials.COUNT, likely.seconds().size());
        for (int k = 0; k < 48; k++) {
            assertEquals(10 * (2 * k + 1.5), likely.seconds().get(k), 5);
        }
        assertEquals(2, likely.never());
        assertEquals(List.of(10.0, 30.0, 50.0), likely.before(60));
    }

    /** Wilson's interval of 30 of 100: 0.2189 to 0.3958 (Newcombe 1998, formula 3, z = 1.95996). */
    @Test
    void aCurveSaysWhichShareIsThroughByEachInstant() {
        CompletionCurve curve = CompletionCurve.of(QUICK, List.of(0.0, 9.9, 300.0, 1e6));
        assertEquals("Quick", curve.mode());
        assertEquals(
                List.of(0.0, 0.0, 0.3, 0.95),
                curve.shares().stream().map(Estimate::value).toList());
        assertEquals(0.2189, curve.shares().get(2).low(), 5e-5);
        assertEquals(0.3958, curve.shares().get(2).high(), 5e-5);
    }
}
