package org.ionohaul.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Mode;
import org.ionohaul.session.SessionResult;
import org.ionohaul.study.InventedStudy;
import org.junit.jupiter.api.Test;

/** Which mode stands in a place of the grid, and with which numbers. */
final class AnswerGridTest {
    private static final int TRIALS = 100;
    private static final List<String> NAMES = List.of("hare", "tortoise", "snail");

    /** On a trial each mode takes so many seconds, zero for never. */
    @FunctionalInterface
    private interface Times {
        double seconds(int trial);
    }

    private static CaseSummary summary(List<Double> deadlines, Times... modes) {
        List<List<SessionResult>> sessions = Arrays.stream(modes)
                .map(mode -> IntStream.range(0, TRIALS)
                        .mapToObj(mode::seconds)
                        .map(it -> it > 0 ? InventedStudy.delivered(it) : InventedStudy.gaveUp(600))
                        .toList())
                .toList();
        return CaseSummary.of(InventedStudy.oneCase(deadlines, NAMES.subList(0, modes.length), sessions));
    }

    private static List<DeadlineAnswer> answers(List<Double> deadlines, Times... modes) {
        return CaseAnswer.of(summary(deadlines, modes)).deadlines();
    }

    private static List<String> names(DeadlineAnswer answer) {
        return answer.modes().stream().map(Mode::name).toList();
    }

    /** Of n trials that all keep it the exact bound is the error rate's n-th root (Clopper and Pearson 1934). */
    @Test
    void theSafeShareIsTheExactBoundForOneOfSoManyModes() {
        DeadlineAnswer alone = answers(List.of(120.0), trial -> 100).get(0);
        assertEquals(1, alone.share());
        assertEquals(Math.pow(0.05, 1.0 / TRIALS), alone.safeShare(), 1e-9);
        DeadlineAnswer ofThree = answers(List.of(120.0), trial -> 100, trial -> 200, trial -> 300)
                .get(0);
        assertEquals(List.of("hare"), names(ofThree));
        assertEquals(Math.pow(0.05 / 3, 1.0 / TRIALS), ofThree.safeShare(), 1e-9);
    }

    /** 90 against 95 of 100 on the same trials is five to nothing: exact sign test 1/16, above any bound. */
    @Test
    void modesThatCannotBeToldApartAreNamedTogetherWithTheLeastOfTheirShares() {
        DeadlineAnswer both = answers(List.of(120.0), trial -> trial < 90 ? 100 : 300, trial -> trial < 95 ? 100 : 300)
                .get(0);
        assertEquals(List.of("hare", "tortoise"), names(both).stream().sorted().toList());
        assertEquals(0.9, both.share());
        assertTrue(both.safeShare() < 0.9, both::toString);
    }

    @Test
    void eachDeadlineHasItsOwnMode() {
        List<DeadlineAnswer> each = answers(List.of(60.0, 300.0), trial -> trial < 50 ? 50 : 0, trial -> 200);
        assertEquals(List.of("hare"), names(each.get(0)));
        assertEquals(0.5, each.get(0).share());
        assertEquals(List.of("tortoise"), names(each.get(1)));
        assertEquals(1, each.get(1).share());
    }

    @Test
    void whereNoModeEverKeepsADeadlineNoneIsNamed() {
        DeadlineAnswer none =
                answers(List.of(60.0, 300.0), trial -> 200, trial -> 250).get(0);
        assertEquals(new DeadlineAnswer(60, List.of(), 0, 0), none);
    }

    @Test
    void withoutDeadlinesItAnswersHowSurelyItArrivesAtAll() {
        List<DeadlineAnswer> each = answers(List.of(), trial -> trial < 60 ? 50 : 0, trial -> 200);
        assertEquals(1, each.size());
        assertEquals(Double.POSITIVE_INFINITY, each.get(0).deadlineSeconds());
        assertEquals(List.of("tortoise"), names(each.get(0)));
    }

    /** Both are the same statement on an order statistic, so that the time to plan for is a deadline kept by 9 of 10. */
    @Test
    void theTimeToPlanForIsTheFirstDeadlineThatNineOfTenKeepForSure() {
        Times steps = trial -> 10 + trial;
        double plan = CaseAnswer.of(summary(List.of(), steps)).plan().seconds().orElseThrow();
        List<DeadlineAnswer> about = answers(List.of(plan - 0.5, plan), steps);
        assertTrue(about.get(0).safeShare() < 0.9, about::toString);
        assertTrue(about.get(1).safeShare() >= 0.9, about::toString);
    }
}
