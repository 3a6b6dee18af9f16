package org.ionohaul.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.ionohaul.session.SessionResult;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.InventedStudy;
import org.ionohaul.study.KeySweep;
import org.ionohaul.study.PlannedPoint;
import org.ionohaul.study.StudyResult;
import org.junit.jupiter.api.Test;

/** Studies compared trial by trial while keys change. */
final class VariationTest {
    private static final PlannedPoint AS_IT_STANDS = new PlannedPoint(Map.of());
    private static final KeySweep X = new KeySweep("x", List.of("1", "2", "3"));
    private static final KeySweep Y = new KeySweep("y", List.of("a", "b"));

    private static PlannedPoint with(String key, String value) {
        return new PlannedPoint(Map.of(key, value));
    }

    /** Forty trials of one mode, every second one quicker by so much. */
    private static StudyResult study(double savedSeconds) {
        List<SessionResult> sessions = IntStream.range(0, 40)
                .mapToObj(i -> InventedStudy.delivered(100 + 5 * i - (i % 2 == 0 ? savedSeconds : 0)))
                .toList();
        return InventedStudy.oneFileStudy(2000, List.of("hare"), List.of(sessions));
    }

    @Test
    void combinationsRunThroughTheLastKeyFastest() {
        assertEquals(
                List.of("1a", "1b", "2a", "2b", "3a", "3b"),
                Variation.plan(List.of(X, Y)).stream()
                        .map(it -> String.join("", it.values()))
                        .toList());
    }

    @Test
    void aTornadoSetsEachKeyAloneToItsFirstAndLastValue() {
        assertEquals(
                List.of(AS_IT_STANDS, with("x", "1"), with("x", "3"), with("y", "a"), with("y", "b")),
                Tornado.plan(List.of(X, Y)));
    }

    /** Twenty of forty trials become 10 s quicker, the others stay: 20 against none is beyond chance. */
    @Test
    void aSmallChangeShowsUnderTheSameSky() {
        PointsDone done = PointsDone.noneOf(2).and(AS_IT_STANDS, study(0)).and(with("x", "1"), study(10));
        PairedEffect effect = done.points().get(1).cases().get(0).modes().get(0).effect();
        assertEquals(20, effect.quickerTrials());
        assertEquals(0, effect.slowerTrials());
        assertEquals(-10, effect.medianChangeSeconds().value(), 1e-9);
        // Two-sided sign test of 20 to none: 2 / 2^20.
        assertEquals(2 / 1048576.0, effect.pValue(), 1e-12);
        // Changes are 0 or 10 s, evenly: variance 25 x 40/39; the times alone spread over 100 to 295 s.
        assertTrue(effect.varianceRatio() < 0.01, effect::toString);
        assertFalse(done.points().get(0).cases().get(0).modes().get(0).effect().changesAnything());
    }

    /** Of eleven letters a deadline of 60 s is kept by 6 before and 9 after; deadlines are those of InventedStudy. */
    @Test
    void aDeadlineIsComparedTrialByTrialAndSoIsTheMargin() {
        PointsDone done = PointsDone.noneOf(2)
                .and(AS_IT_STANDS, letters(new double[] {50, 50, 50, 50, 50, 50, 70, 70, 70, 70, 70}))
                .and(with("x", "1"), letters(new double[] {50, 50, 50, 50, 50, 50, 55, 55, 55, 70, 70}));
        CasePoint after = done.points().get(1).cases().get(0);
        assertEquals(
                3 / 11.0, after.modes().get(0).effect().deadlineChanges().get(0).value(), 1e-12);
        assertEquals(0, after.modes().get(0).effect().deadlineChanges().get(1).value());
        // The tortoise takes 65 s, never within 60 s: 9 to none (sign test, p = 2/2^9) is beyond chance for one of 4
        // tests
        // at one of 2 points (p < 0.05/8), 6 to none is not.
        assertEquals(CasePoint.Choice.CLEAR, after.choice());
        assertEquals(
                CasePoint.Choice.TOO_CLOSE_TO_CALL,
                done.points().get(0).cases().get(0).choice());
        assertEquals(9 / 11.0, after.margin().orElseThrow().bestBefore().value(), 1e-12);
        assertEquals(
                9 / 11.0, after.margin().orElseThrow().deadlineLeads().get(0).value(), 1e-12);
    }

    private static StudyResult letters(double[] hareSeconds) {
        List<SessionResult> hare =
                Arrays.stream(hareSeconds).mapToObj(InventedStudy::delivered).toList();
        List<SessionResult> tortoise =
                hare.stream().map(it -> InventedStudy.delivered(65)).toList();
        CaseTrials trials = InventedStudy.oneCase(
                InventedStudy.LETTER.deadlinesSeconds(), List.of("hare", "tortoise"), List.of(hare, tortoise));
        return new StudyResult(
                InventedStudy.scenario(hareSeconds.length, trials.transfer(), "hare", "tortoise"),
                List.of(trials),
                hareSeconds.length,
                hareSeconds.length);
    }

    @Test
    void theKeyThatMattersMostComesFirst() {
        PointsDone done = PointsDone.noneOf(5)
                .and(AS_IT_STANDS, study(0))
                .and(with("x", "1"), study(1))
                .and(with("x", "3"), study(-2))
                .and(with("y", "a"), study(30))
                .and(with("y", "b"), study(0));
        Tornado tornado = Tornado.of(study(0).scenario(), List.of(X, Y), done.points());
        assertEquals(
                List.of("y", "x"),
                tornado.ranked(0, 0).stream().map(TornadoBar::key).toList());
        assertFalse(tornado.isPartial());
    }

    @Test
    void aKeyWithOneEndDoneIsLeftOutOfAPartialTornado() {
        PointsDone done = PointsDone.noneOf(5)
                .and(AS_IT_STANDS, study(0))
                .and(with("x", "1"), study(1))
                .and(with("x", "3"), study(-2))
                .and(with("y", "a"), study(30));
        Tornado tornado = Tornado.of(study(0).scenario(), List.of(X, Y), done.points());
        assertEquals(1, tornado.bars().size());
        assertTrue(tornado.isPartial());
    }
}
