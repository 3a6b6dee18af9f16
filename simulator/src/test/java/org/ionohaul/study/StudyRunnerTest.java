package org.ionohaul.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Trials in parallel, results in order. */
final class StudyRunnerTest {
    private final Scenario scenario = InventedStudy.scenario(300, InventedStudy.LETTER, "hare", "tortoise");

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 8})
    void resultsAreTheSameForAnyNumberOfThreads(int threads) {
        TrialSource source = InventedStudy.chance(scenario);
        StudyResult alone = new StudyRunner(scenario, source, 1, (done, asked) -> {}, () -> false).run();
        StudyResult together = new StudyRunner(scenario, source, threads, (done, asked) -> {}, () -> false).run();
        assertEquals(StudySummary.of(alone), StudySummary.of(together));
        assertEquals(rows(alone), rows(together));
    }

    @Test
    void rowsAreFiledByCaseModeAndTrial() {
        TrialSource source = trial -> IntStream.range(0, 4)
                .mapToObj(i -> InventedStudy.delivered(1000.0 * (i + 1) + (double) trial))
                .toList();
        StudyResult result = new StudyRunner(scenario, source, 3, (done, asked) -> {}, () -> false).run();
        assertEquals(Direction.UPLOAD, result.cases().get(0).direction());
        assertEquals(Direction.DOWNLOAD, result.cases().get(1).direction());
        ModeTrials tortoiseDown = result.cases().get(1).modes().get(1);
        assertEquals("tortoise", tortoiseDown.mode().name());
        assertEquals(
                LongStream.range(0, 300).mapToObj(trial -> 4000.0 + trial).toList(),
                tortoiseDown.rows().stream().map(TrialRow::deliveredSeconds).toList());
        assertFalse(result.isPartial());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 4})
    void aCancelledStudyIsTheStudyOfSoManyTrials(int threads) {
        AtomicInteger questions = new AtomicInteger();
        TrialSource source = InventedStudy.chance(scenario);
        StudyResult cancelled = new StudyRunner(
                        scenario, source, threads, (done, asked) -> {}, () -> questions.incrementAndGet() > 100)
                .run();
        assertTrue(cancelled.isPartial());
        assertTrue(cancelled.trialsDone() > 50 && cancelled.trialsDone() <= 100, "" + cancelled.trialsDone());
        Scenario smaller = InventedStudy.scenario(cancelled.trialsDone(), InventedStudy.LETTER, "hare", "tortoise");
        StudyResult whole = new StudyRunner(smaller, source, 1, (done, asked) -> {}, () -> false).run();
        assertEquals(StudySummary.of(whole), StudySummary.of(cancelled));
    }

    @Test
    void progressCountsEveryTrialOnce() {
        List<Integer> heard = new ArrayList<>();
        StudyProgress listener = (done, asked) -> {
            assertEquals(300, asked);
            heard.add(done);
        };
        new StudyRunner(scenario, InventedStudy.chance(scenario), 4, listener, () -> false).run();
        assertEquals(IntStream.rangeClosed(1, 300).boxed().toList(), heard);
    }

    @Test
    void aTrialThatFailsIsNamed() {
        TrialSource source = trial -> {
            if (trial == 17) {
                throw new IllegalArgumentException("broken mast");
            }
            return InventedStudy.chance(scenario).run(trial);
        };
        StudyRunner runner = new StudyRunner(scenario, source, 2, (done, asked) -> {}, () -> false);
        IllegalStateException failure = assertThrows(IllegalStateException.class, runner::run);
        assertEquals("trial 17 failed: broken mast", failure.getMessage());
    }

    @Test
    void anErrorInOneThreadStopsTheOthersWhateverTheyDo() throws InterruptedException {
        CountDownLatch never = new CountDownLatch(1);
        AtomicInteger begun = new AtomicInteger();
        TrialSource source = trial -> {
            begun.incrementAndGet();
            if (trial == 5) {
                throw new StackOverflowError("too deep");
            }
            if (trial == 0) {
                await(never);
            }
            return InventedStudy.chance(scenario).run(trial);
        };
        StudyRunner runner = new StudyRunner(scenario, source, 3, (done, asked) -> {}, () -> false);
        // The first trial never ends: the failure is told all the same.
        IllegalStateException failure = assertThrows(IllegalStateException.class, runner::run);
        assertEquals("trial 5 failed: too deep", failure.getMessage());
        assertTrue(failure.getCause() instanceof StackOverflowError);
        int begunThen = begun.get();
        assertTrue(begunThen < 300, "began " + begunThen);
        never.countDown();
    }

    @Test
    void anErrorBetweenTrialsIsNotTakenForAnInterruption() {
        StudyProgress broken = (done, asked) -> {
            if (done == 40) {
                throw new OutOfMemoryError("no room to tell");
            }
        };
        StudyRunner runner = new StudyRunner(scenario, InventedStudy.chance(scenario), 2, broken, () -> false);
        IllegalStateException failure = assertThrows(IllegalStateException.class, runner::run);
        assertTrue(String.valueOf(failure.getMessage()).contains("no room to tell"), failure::toString);
    }

    @Test
    void whatIsDoneIsKeptEvenIfTheNextTrialIsSlow(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("study.journal");
        try (Journal journal = Journal.begin(file, "print")) {
            long empty = Files.size(file);
            TrialSource source = trial -> {
                if (trial == 2) {
                    awaitMoreThan(empty, file);
                }
                return InventedStudy.chance(scenario).run(trial);
            };
            new StudyRunner(scenario, source, 1, (done, asked) -> {}, () -> false).run(RowStore.in(journal, "study"));
            assertEquals(300, RowStore.in(journal, "study").trials());
        }
    }

    /** Waits for a file to grow, a minute at most. */
    private static void awaitMoreThan(long bytes, Path file) {
        try {
            for (int attempt = 0; Files.size(file) <= bytes; attempt++) {
                assertTrue(attempt < 6000, "two trials are done and nothing is kept of them");
                Thread.sleep(10);
            }
        } catch (IOException | InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void aSlowTrialDoesNotHoldUpTheOthersUntilTheyAreFarAhead() {
        Scenario many = InventedStudy.scenario(3000, InventedStudy.LETTER, "hare", "tortoise");
        CountDownLatch othersAreAhead = new CountDownLatch(900);
        AtomicInteger farthest = new AtomicInteger();
        TrialSource source = trial -> {
            if (trial == 0) {
                await(othersAreAhead);
                assertTrue(farthest.get() <= 1000, "rows of " + farthest + " trials wait in memory");
            } else {
                farthest.accumulateAndGet((int) trial, Math::max);
                othersAreAhead.countDown();
            }
            return InventedStudy.chance(many).run(trial);
        };
        StudyResult result = new StudyRunner(many, source, 2, (done, asked) -> {}, () -> false).run();
        StudyResult alone =
                new StudyRunner(many, InventedStudy.chance(many), 1, (done, asked) -> {}, () -> false).run();
        assertEquals(rows(alone), rows(result));
    }

    private static void await(CountDownLatch latch) {
        try {
            assertTrue(latch.await(1, TimeUnit.MINUTES));
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private static List<String> rows(StudyResult result) {
        return result.cases().stream()
                .flatMap(it -> it.modes().stream())
                .flatMap(it -> it.rows().stream())
                .map(row -> row.trial() + " " + row.outcome() + " " + row.endedNanos() + " " + row.reachedSeconds(0))
                .toList();
    }
}
