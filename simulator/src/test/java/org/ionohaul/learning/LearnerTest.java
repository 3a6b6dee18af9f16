package org.ionohaul.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.placing.SimulatedRun;
import org.ionohaul.scenario.Direction;
import org.ionohaul.study.TrialPool;
import org.junit.jupiter.api.Test;

/** What learning does at its limits: logs that nothing explains, and too few simulations. */
final class LearnerTest {
    private static final InventedLog.Kind STRAIGHT = new InventedLog.Kind(true, 1, 1e5);

    private static Learned learned(List<LoggedRun> runs, List<LogModel.MeterReading> readings, int sets) {
        return new Learner(InventedLog.model(STRAIGHT, runs, readings, 7), sets, TrialPool.of(2), 7)
                .learned()
                .orElseThrow();
    }

    /** Runs of so many minutes. */
    private static List<LoggedRun> runs(double... minutes) {
        return IntStream.range(0, minutes.length)
                .mapToObj(it -> InventedLog.logged(
                        InventedLog.plan(it + 1, "invented", Direction.UPLOAD, 40_000, 1e5),
                        new SimulatedRun(60 * minutes[it], 60 * minutes[it] + 10, 40_000),
                        1))
                .toList();
    }

    @Test
    void runsThatNoValuesOfTheUnknownsMakeAreCalledOut() {
        // Runs 1, 3, 5 hang on one unknown and scatter by 30 %: 3 and 40 minutes do not go together.
        Learned learned = learned(runs(3, 10, 40, 10, 3, 10, 40, 10), List.of(), 300);
        assertFalse(learned.isExplained(), "chance " + learned.chanceOfLess());
        assertTrue(learned(runs(9, 10, 12, 10, 8, 10, 11, 10), List.of(), 300).isExplained());
    }

    @Test
    void runsBeyondAllThatTheModelMakesAreCalledOutThoughTheyAgreeWithEachOther() {
        // Half a minute in place of ten is a factor of exp(-3): seven deviations of an unknown.
        Learned learned = learned(runs(0.5, 0.5, 0.5, 0.5), List.of(), 300);
        assertFalse(learned.isExplained(), "chance " + learned.chanceOfLess());
        // Six minutes are a factor of exp(-0.5), a little over one deviation.
        assertTrue(learned(runs(6, 6, 6, 6), List.of(), 300).isExplained());
    }

    @Test
    void runsThatContradictAReadingAreCalledOut() {
        // The first unknown is at its middle by the runs, seven deviations above by an exact meter.
        List<LogModel.MeterReading> far = List.of(new LogModel.MeterReading(4.5, 0.2));
        Learned learned = learned(runs(9, 10, 12, 10, 8, 10, 11, 10), far, 300);
        assertFalse(learned.isExplained(), "chance " + learned.chanceOfLess());
    }

    @Test
    void withFewSimulationsNothingIsClaimed() {
        Learned learned = learned(runs(9, 10, 12, 10), List.of(), 30);
        assertTrue(learned.effectiveSets() <= 90, "no more than were simulated");
        assertFalse(learned.isWellFounded());
    }

    @Test
    void aCancelledRunTeachesNothing() {
        TrialPool cancelled = new TrialPool(2, (done, asked) -> {}, () -> true);
        assertEquals(
                Optional.empty(),
                new Learner(InventedLog.model(STRAIGHT, runs(9, 10), List.of(), 7), 50, cancelled, 7).learned());
    }

    @Test
    void theAnswerDoesNotHangOnTheThreads() {
        List<LoggedRun> runs = runs(7, 14, 8, 12);
        Learned one = new Learner(InventedLog.model(STRAIGHT, runs, List.of(), 7), 100, TrialPool.of(1), 7)
                .learned()
                .orElseThrow();
        Learned three = new Learner(InventedLog.model(STRAIGHT, runs, List.of(), 7), 100, TrialPool.of(3), 7)
                .learned()
                .orElseThrow();
        for (int draw = 0; draw < Learner.DRAWS; draw++) {
            assertEquals(
                    one.belief().draws().get(draw)[0], three.belief().draws().get(draw)[0], 0, "draw " + draw);
        }
    }

    @Test
    void weightsAreWorthWhatKishSays() {
        assertEquals(4, Weights.effective(new double[] {0.5, 0.5, 0.5, 0.5}), 1e-12);
        // (1 + 1)^2 / 2, whatever else is 0.
        assertEquals(2, Weights.effective(new double[] {1, 1, 0, 0}), 1e-12);
        assertEquals(Math.log(2), Weights.logMean(new double[] {Math.log(1), Math.log(3)}), 1e-12);
    }
}
