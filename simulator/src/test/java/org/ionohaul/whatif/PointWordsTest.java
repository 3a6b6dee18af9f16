package org.ionohaul.whatif;

import static org.ionohaul.whatif.InventedPoints.NEVER;
import static org.ionohaul.whatif.InventedPoints.ahead;
import static org.ionohaul.whatif.InventedPoints.clear;
import static org.ionohaul.whatif.InventedPoints.effect;
import static org.ionohaul.whatif.InventedPoints.mode;
import static org.ionohaul.whatif.InventedPoints.nothing;
import static org.ionohaul.whatif.InventedPoints.open;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.ionohaul.analysis.Alike;
import org.ionohaul.analysis.CasePoint;
import org.ionohaul.analysis.Leaders;
import org.ionohaul.analysis.Margin;
import org.ionohaul.analysis.Verdict;
import org.ionohaul.rendering.Cell;
import org.ionohaul.report.FabricatedStudy;
import org.ionohaul.scenario.Mode;
import org.ionohaul.statistics.Estimate;
import org.junit.jupiter.api.Test;

/** What a cell of a variation's tables says. */
final class PointWordsTest {
    private static final List<Mode> MODES = FabricatedStudy.result().scenario().modes();
    private static final List<Double> DEADLINES = List.of(300.0, 900.0);

    private static String range(double value, double low, double high) {
        return PointWords.changeRange(effect(new Estimate(value, low, high), 5, 60, true));
    }

    @Test
    void aChangeHasItsSignAndStandsInBracketsIfItCouldBeChance() {
        assertEquals("+1 min 20 s", PointWords.change(effect(new Estimate(80, 70, 90), 0, 60, true)));
        assertEquals("-40 s", PointWords.change(effect(new Estimate(-40, -50, -30), 60, 0, true)));
        assertEquals("(-40 s)", PointWords.change(effect(new Estimate(-40, -50, 30), 8, 5, false)));
        assertEquals("fails", PointWords.change(effect(new Estimate(NEVER, 20, NEVER), 0, 60, true)));
        assertEquals("arrives", PointWords.change(effect(new Estimate(-NEVER, -NEVER, -20), 60, 0, true)));
        assertEquals("none", PointWords.change(InventedPoints.NO_EFFECT));
    }

    /** Half a second is where a second begins, so that nothing is told with a sign that is not. */
    @Test
    void aChangeOfLessThanHalfASecondHasNoSign() {
        assertEquals("0 s", PointWords.signed(0.49));
        assertEquals("+1 s", PointWords.signed(0.5));
        assertEquals("0 s", PointWords.signed(-0.49));
        assertEquals("-1 s", PointWords.signed(-0.5));
        assertEquals("0", PointWords.signedPoints(0.0049));
        assertEquals("+1", PointWords.signedPoints(0.005));
        assertEquals("0", PointWords.signedPoints(-0.005));
        assertEquals("-1", PointWords.signedPoints(-0.0051));
    }

    @Test
    void anOpenEndOfARangeIsToldByTheOtherIfThatTellsTheWay() {
        assertEquals("+1 min 10 s to +1 min 30 s", range(80, 70, 90));
        assertEquals("-5 s to +9 s", range(3, -5, 9));
        assertEquals("", range(80, 79.9, 80.1));
        assertEquals("+20 s or more", range(80, 20, NEVER));
        assertEquals("-20 s or more", range(-80, -NEVER, -20));
        assertEquals("open", range(80, 0, NEVER));
        assertEquals("open", range(-80, -NEVER, 0));
        assertEquals("open", range(0, -NEVER, NEVER));
        assertEquals("", range(NEVER, NEVER, NEVER));
        assertEquals("", PointWords.changeRange(InventedPoints.NO_EFFECT));
    }

    @Test
    void pointsOfAHundredHaveTheirRange() {
        assertEquals(new Cell("+12", "-1 to +25"), PointWords.points(new Estimate(0.12, -0.01, 0.25)));
        assertEquals(new Cell("0", ""), PointWords.points(new Estimate(0, -0.004, 0.004)));
    }

    @Test
    void aModeIsNamedAloneOnlyWhereItIsAhead() {
        assertEquals("Tough", PointWords.best(clear(1), MODES));
        assertEquals("Quick or Tough", PointWords.best(open(), MODES));
        assertEquals("none", PointWords.best(nothing(), MODES));
        assertEquals("Tough is best", PointWords.bestSentence(clear(1), MODES));
        assertEquals("best is Quick or Tough, which can't be told apart", PointWords.bestSentence(open(), MODES));
        assertEquals("no mode gets anything through", PointWords.bestSentence(nothing(), MODES));
    }

    @Test
    void aMarginIsToldByWhoIsFirstElseByTheDeadlineThatTellsMost() {
        assertEquals("before Quick on 69 % (59-77 %)", PointWords.margin(clear(1), MODES, DEADLINES));
        assertEquals("before Tough on 69 % (59-77 %)", PointWords.margin(clear(0), MODES, DEADLINES));
        assertEquals(
                "alike within 4 of 100 trials by each deadline, 30 s on the median",
                PointWords.margin(open(), MODES, DEADLINES));
        assertEquals(
                "alike within 4 of 100 trials that get through, 30 s on the median",
                PointWords.margin(open(), MODES, List.of()));
        assertEquals("nothing arrives", PointWords.margin(nothing(), MODES, DEADLINES));
        // First on as many as behind: of the deadlines, the second's lead has the higher lower end.
        Margin even = new Margin(
                1,
                Verdict.Standing.SURER,
                new Estimate(0.2, 0.1, 0.3),
                new Estimate(0.2, 0.1, 0.3),
                new Estimate(0, -5, 5),
                ahead(1).deadlineLeads(),
                new Estimate(0.1, 0.05, 0.15));
        assertEquals("by 15 min on +8 % (+1 to +15) against Tough", PointWords.margin(with(even), MODES, DEADLINES));
        assertEquals("the only mode", PointWords.margin(alone(), MODES, DEADLINES));
    }

    /** Of modes that can't be told apart the time is left out where on too many trials just one gets through. */
    @Test
    void modesOfWhichTooFewTrialsTellHaveNoTime() {
        CasePoint point = new CasePoint(
                open().modes(), new Leaders(List.of(0, 1), Optional.of(new Alike(0.101, NEVER))), Optional.empty());
        assertEquals("open by up to 11 of 100 trials by each deadline", PointWords.margin(point, MODES, DEADLINES));
    }

    private static CasePoint with(Margin margin) {
        return new CasePoint(open().modes(), new Leaders(List.of(0), Optional.empty()), Optional.of(margin));
    }

    private static CasePoint alone() {
        return new CasePoint(
                List.of(mode(InventedPoints.NO_EFFECT)), new Leaders(List.of(0), Optional.empty()), Optional.empty());
    }
}
