package org.ionohaul.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/** The engine's clock and list of actions. */
final class EngineTest {
    private final Engine engine = new Engine();
    private final List<String> diary = new ArrayList<>();

    @Test
    void actionsRunInOrderOfTime() {
        engine.schedule(30, () -> note("third"));
        engine.schedule(10, () -> note("first"));
        engine.schedule(20, () -> note("second"));
        engine.run();
        assertEquals(List.of("10 first", "20 second", "30 third"), diary);
    }

    @Test
    void actionsDueTogetherRunInTheOrderScheduled() {
        IntStream.range(0, 100).forEach(i -> engine.schedule(5, () -> note("" + i)));
        engine.run();
        assertEquals(IntStream.range(0, 100).mapToObj(i -> "5 " + i).toList(), diary);
    }

    @Test
    void anActionScheduledForNowRunsAfterThoseThatWaitedForIt() {
        engine.schedule(5, () -> engine.schedule(0, () -> note("late")));
        engine.schedule(5, () -> note("waiting"));
        engine.run();
        assertEquals(List.of("5 waiting", "5 late"), diary);
    }

    @Test
    void manyActionsAtRandomInstantsComeOutInOrder() {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(1L);
        List<Long> instants = new ArrayList<>();
        random.longs(10_000, 0, 1000).forEach(delay -> engine.schedule(delay, () -> instants.add(engine.nowNanos())));
        engine.run();
        assertEquals(10_000, instants.size());
        assertEquals(instants.stream().sorted().toList(), instants);
        assertEquals(0, engine.pending());
    }

    @Test
    void runUntilStopsTheClockAtTheInstantAndKeepsTheRest() {
        engine.schedule(10, () -> note("due"));
        engine.schedule(20, () -> note("due too"));
        engine.schedule(21, () -> note("later"));
        engine.runUntil(20);
        assertEquals(List.of("10 due", "20 due too"), diary);
        assertEquals(20, engine.nowNanos());
        assertEquals(1, engine.pending());
        engine.run();
        assertEquals(21, engine.nowNanos());
    }

    @Test
    void runUntilLeavesTheClockAtTheLastActionWhenNothingIsLeft() {
        engine.schedule(10, () -> note("only"));
        engine.runUntil(1000);
        assertEquals(10, engine.nowNanos());
    }

    @Test
    void theClockNeverRunsBackwards() {
        engine.schedule(100, () -> note("far"));
        engine.runUntil(50);
        engine.runUntil(20);
        assertEquals(50, engine.nowNanos());
    }

    @Test
    void instantsBeyondTheClockAreRefused() {
        engine.schedule(Long.MAX_VALUE, () -> note("end of time"));
        engine.schedule(
                1,
                () -> assertThrows(
                        ArithmeticException.class, () -> engine.schedule(Long.MAX_VALUE, () -> note("never"))));
        engine.run();
        assertEquals(List.of(Long.MAX_VALUE + " end of time"), diary);
    }

    @Test
    void thePastIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> engine.schedule(-1, () -> note("never")));
        assertThrows(
                IllegalArgumentException.class,
                () -> engine.timer(() -> note("never")).start(-1));
    }

    @Test
    void aTimerRunsOnceEachTimeItIsStarted() {
        Timer timer = engine.timer(() -> note("alarm"));
        timer.start(10);
        assertTrue(timer.isRunning());
        engine.run();
        assertFalse(timer.isRunning());
        timer.start(10);
        engine.run();
        assertEquals(List.of("10 alarm", "20 alarm"), diary);
    }

    @Test
    void aStoppedTimerStaysSilent() {
        Timer timer = engine.timer(() -> note("alarm"));
        timer.start(10);
        engine.schedule(5, timer::stop);
        engine.run();
        assertEquals(List.of(), diary);
        assertFalse(timer.isRunning());
    }

    @Test
    void aTimerStartedAnewForgetsItsFirstAlarm() {
        Timer timer = engine.timer(() -> note("alarm"));
        timer.start(10);
        engine.schedule(5, () -> timer.start(10));
        engine.run();
        assertEquals(List.of("15 alarm"), diary);
    }

    @Test
    void aTimerMayStartItselfAnew() {
        List<Timer> self = new ArrayList<>();
        self.add(engine.timer(() -> {
            note("tick");
            if (diary.size() < 3) {
                self.get(0).start(10);
            }
        }));
        self.get(0).start(10);
        engine.run();
        assertEquals(List.of("10 tick", "20 tick", "30 tick"), diary);
    }

    @Test
    void stoppedAndStartedAtOnceCountsOnce() {
        Timer timer = engine.timer(() -> note("alarm"));
        timer.start(10);
        timer.stop();
        timer.start(10);
        engine.run();
        assertEquals(List.of("10 alarm"), diary);
    }

    private void note(String what) {
        diary.add(engine.nowNanos() + " " + what);
    }
}
