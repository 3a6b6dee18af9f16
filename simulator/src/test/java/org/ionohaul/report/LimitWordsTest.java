package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.Limit;
import org.ionohaul.analysis.Limits;
import org.ionohaul.analysis.SizePromises;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.study.StudyResult;
import org.junit.jupiter.api.Test;

/** What keeps trials from a deadline is told in full words, with the scenario's own numbers. */
final class LimitWordsTest {
    private static final StudyResult HOUR = FabricatedStudy.result();

    private static String reason(Map<Limit, Integer> counts) {
        return new LimitWords(HOUR.scenario()).reason(new Limits(counts));
    }

    @Test
    void theLimitIsToldWithItsNumberAndHowMuchItMakes() {
        assertEquals("the horizon of 1 h ended it", reason(Map.of(Limit.HORIZON, 5)));
        assertEquals(
                "mostly the link was lost and redials used up", reason(Map.of(Limit.LOST_LINKS, 6, Limit.NO_LINK, 4)));
        assertEquals(
                "most often no call was answered",
                reason(Map.of(Limit.LOST_LINKS, 3, Limit.NO_LINK, 4, Limit.DEADLINE, 3)));
        assertEquals("", reason(Map.of()));
    }

    @Test
    void patienceIsToldWithItsLength() {
        assertEquals(
                "the operator's 45 min ran out",
                new LimitWords(FabricatedStudy.impatient(2700).scenario())
                        .reason(new Limits(Map.of(Limit.PATIENCE, 1))));
    }

    /** "quick" gives up from trial 60 on, after 614 s and more: by 900 s 29 of the 40 late ones have. */
    @Test
    void aModeThatIsNotStoppedByTheDeadlineIsNamedInTheStudyWithItsChance() {
        CaseSummary summary =
                StudySummary.of(FabricatedStudy.result(100, 60)).cases().get(0);
        assertEquals(
                List.of("Quick, 60 % by 15 min: else mostly the link was lost and redials used up."),
                new LimitWords(HOUR.scenario()).ofModes(summary));
        assertEquals(
                List.of(),
                new LimitWords(HOUR.scenario())
                        .ofModes(StudySummary.of(HOUR).cases().get(0)));
    }

    /** Five of a hundred give up by 1004 s: from then on rows are alike, and it is said why. */
    @Test
    void rowsThatAreAlikeAreExplained() {
        SizePromises promises = SizePromises.of(HOUR, 3600, 0.95).get(0);
        SizePromises.OfMode quick = promises.modes().get(0);
        assertEquals(
                "What stops a larger file within 20 min to 1 h: the link was lost and redials used up, so that a later"
                        + " deadline promises no more.",
                new LimitWords(HOUR.scenario()).byDeadline(quick));
        List<Double> safe = quick.deadlines().stream()
                .map(it -> it.asked().bytes().low())
                .distinct()
                .toList();
        assertTrue(safe.size() == 1, safe::toString);
    }
}
