package org.ionohaul.livepage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.Proportion;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a range comes to for somebody who watches the page while trials come in, counted over whole watches. */
final class RepeatedLooksTest {
    private static final int MOST = 1000;
    private static final int WATCHES = 2000;

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.7, 0.9, 0.95})
    void thePageSaysHowOftenARangeMissesAtSomeLook(double chance) {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(917L);
        int some = 0;
        int last = 0;
        for (int watch = 0; watch < WATCHES; watch++) {
            boolean isMissed = false;
            boolean isMissedLast = false;
            int hits = 0;
            for (int done = 0; done < MOST; ) {
                int next = Math.min(MOST, LiveRun.next(done));
                for (; done < next; done++) {
                    hits += random.nextDouble() < chance ? 1 : 0;
                }
                Estimate range = new Proportion(hits, done).wilson(Estimate.CONFIDENCE);
                isMissedLast = chance < range.low() || chance > range.high();
                isMissed |= isMissedLast;
            }
            some += isMissed ? 1 : 0;
            last += isMissedLast ? 1 : 0;
        }
        assertTrue(AnswerView.LOOKS.contains("some 32 to 39 see"), AnswerView.LOOKS);
        assertTrue(AnswerView.LOOKS.contains("at the last look 5;"), AnswerView.LOOKS);
        double share = (double) some / WATCHES;
        double slack = 3 * Math.sqrt(0.39 * 0.61 / WATCHES);
        assertTrue(share > 0.32 - slack && share < 0.39 + slack, "missed at some look: " + share);
        // Wilson's interval covers 95 % on average over chances, not at each: half a point either way.
        assertEquals(0.05, (double) last / WATCHES, 0.005 + 3 * Math.sqrt(0.05 * 0.95 / WATCHES));
    }
}
