package org.ionohaul.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.limits.TestedRange;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.statistics.OrderedSample;
import org.junit.jupiter.api.Test;

/** When a study may stop. */
final class PrecisionGoalTest {
    private static final double NEVER = Double.POSITIVE_INFINITY;

    private final Scenario scenario = InventedStudy.scenario(1, InventedStudy.LETTER, "hare", "tortoise");

    /** 95 of 100 within the first deadline and all within the second: Wilson half-widths 4.5 and 1.8 points. */
    @Test
    void everyDeadlineMustBeExactEnough() {
        OrderedSample sample = OrderedSample.of(
                IntStream.range(0, 100).mapToDouble(i -> i < 95 ? 50 : 100).toArray());
        assertTrue(new PrecisionGoal.DeadlineChances(0.046).isReached(InventedStudy.LETTER, sample));
        assertFalse(new PrecisionGoal.DeadlineChances(0.044).isReached(InventedStudy.LETTER, sample));
    }

    /** The median of 1 to 20 is 10 with the table's interval from 6 to 15: half-width 45 %. */
    @Test
    void aQuantileMustBeExactToAShareOfItself() {
        OrderedSample sample =
                OrderedSample.of(IntStream.rangeClosed(1, 20).asDoubleStream().toArray());
        assertTrue(new PrecisionGoal.CompletionQuantile(0.5, 0.45).isReached(InventedStudy.LETTER, sample));
        assertFalse(new PrecisionGoal.CompletionQuantile(0.5, 0.44).isReached(InventedStudy.LETTER, sample));
    }

    @Test
    void aQuantileThatIsSurelyNotReachedIsExact() {
        OrderedSample never = OrderedSample.of(
                IntStream.range(0, 100).mapToDouble(i -> i < 10 ? 50 : NEVER).toArray());
        OrderedSample undecided = OrderedSample.of(
                IntStream.range(0, 100).mapToDouble(i -> i < 50 ? 50 : NEVER).toArray());
        assertTrue(new PrecisionGoal.CompletionQuantile(0.5, 0.1).isReached(InventedStudy.LETTER, never));
        assertFalse(new PrecisionGoal.CompletionQuantile(0.5, 0.1).isReached(InventedStudy.LETTER, undecided));
    }

    /** The median itself was not reached, but its interval (ranks 40 to 61 of 100) begins among times that were. */
    @Test
    void aQuantileThatMayOrMayNotBeReachedIsNotExact() {
        OrderedSample undecided = OrderedSample.of(
                IntStream.range(0, 100).mapToDouble(i -> i < 49 ? 50 : NEVER).toArray());
        assertFalse(new PrecisionGoal.CompletionQuantile(0.5, 0.1).isReached(InventedStudy.LETTER, undecided));
    }

    @Test
    void onlyChancesOfDeadlinesNeedADeadline() {
        Transfer without =
                new Transfer("file", InventedStudy.LETTER.files(), InventedStudy.LETTER.directions(), List.of());
        PrecisionGoal chances = new PrecisionGoal.DeadlineChances(0.1);
        PrecisionGoal quantile = new PrecisionGoal.CompletionQuantile(0.5, 0.1);
        assertFalse(chances.asksAnythingOf(List.of(without)));
        assertTrue(chances.asksAnythingOf(List.of(without, InventedStudy.LETTER)));
        assertTrue(quantile.asksAnythingOf(List.of(without)));
    }

    @Test
    void looksGrowByAFifthInWholeBlocks() {
        List<Integer> looks = new ArrayList<>();
        assertEquals(1000, SampleSizes.stopAt(size -> !looks.add(size), 1000));
        assertEquals(List.of(400, 500, 600, 750, 900, 1000), looks);
    }

    @Test
    void aStudyStopsWhenItsGoalIsReachedOnAnyNumberOfThreads() {
        PrecisionGoal goal = new PrecisionGoal.DeadlineChances(0.04);
        StudyResult alone = runUntil(goal, 1, 100_000);
        StudyResult together = runUntil(goal, 3, 100_000);
        // At worst a share of one half: 1.96^2 / (4 x 0.04^2) = 600 trials, found at the next look.
        assertTrue(alone.trialsDone() >= 500 && alone.trialsDone() <= 750, "" + alone.trialsDone());
        assertEquals(alone.trialsDone(), together.trialsDone());
        assertEquals(StudySummary.of(alone), StudySummary.of(together));
        assertFalse(alone.isPartial());
    }

    @Test
    void aStudyStopsAtItsMostTrials() {
        assertEquals(
                430, runUntil(new PrecisionGoal.DeadlineChances(0.001), 2, 430).trialsDone());
    }

    @Test
    void aResumedStudyIsTheUninterruptedOne() {
        Scenario whole = InventedStudy.scenario(200, InventedStudy.LETTER, "hare", "tortoise");
        TrialSource source = InventedStudy.chance(whole);
        RowStore interrupted = trials(70, source);
        StudyRunner runner = new StudyRunner(whole, source, 2, (done, asked) -> {}, () -> false);
        assertEquals(StudySummary.of(runner.run()), StudySummary.of(runner.run(interrupted)));
    }

    /** It was interrupted after more trials than the first looks ask for. */
    @Test
    void aStudyWithAGoalThatIsResumedLateIsTheUninterruptedOne() {
        PrecisionGoal goal = new PrecisionGoal.DeadlineChances(0.03);
        StudyResult whole = runUntil(goal, 2, 100_000);
        assertTrue(whole.trialsDone() > 600, "" + whole.trialsDone());
        TrialSource source = InventedStudy.chance(scenario);
        StudyRunner runner = new StudyRunner(scenario, source, 2, (done, asked) -> {}, () -> false);
        StudyResult resumed = runner.runUntil(trials(610, source), goal, 100_000);
        assertEquals(whole.trialsDone(), resumed.trialsDone());
        assertEquals(StudySummary.of(whole), StudySummary.of(resumed));
    }

    @Test
    void ofAStudyThatIsResumedForFewerTrialsTheFirstOnesCount() {
        Scenario fewer = InventedStudy.scenario(30, InventedStudy.LETTER, "hare", "tortoise");
        TrialSource source = InventedStudy.chance(fewer);
        StudyRunner runner = new StudyRunner(fewer, source, 1, (done, asked) -> {}, () -> false);
        StudyResult resumed = runner.run(trials(70, source));
        assertEquals(30, resumed.trialsDone());
        assertFalse(resumed.isPartial());
        assertEquals(StudySummary.of(runner.run()), StudySummary.of(resumed));
    }

    @Test
    void impossibleGoalsAreRefused() {
        double aboveZero = Double.MIN_VALUE;
        TestedRange.ofNumber("halfWidth", aboveZero, Math.nextDown(0.5), PrecisionGoal.DeadlineChances::new);
        TestedRange.ofNumber(
                "probability", aboveZero, Math.nextDown(1.0), it -> new PrecisionGoal.CompletionQuantile(it, 0.1));
        TestedRange.ofNumber(
                "halfWidthShare",
                aboveZero,
                Double.POSITIVE_INFINITY,
                it -> new PrecisionGoal.CompletionQuantile(0.5, it));
    }

    private static RowStore trials(int count, TrialSource source) {
        Scenario part = InventedStudy.scenario(count, InventedStudy.LETTER, "hare", "tortoise");
        RowStore rows = RowStore.nameless();
        new StudyRunner(part, source, 1, (done, asked) -> {}, () -> false).run(rows);
        return rows;
    }

    private StudyResult runUntil(PrecisionGoal goal, int threads, int mostTrials) {
        return new StudyRunner(scenario, InventedStudy.chance(scenario), threads, (done, asked) -> {}, () -> false)
                .runUntil(RowStore.nameless(), goal, mostTrials);
    }
}
