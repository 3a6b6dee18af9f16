package org.ionohaul.livepage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.study.StudyRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class LiveRunsTest {
    private static final int MANY = 100_000;

    /** More than any step of a run that is left takes. */
    private static final int LOOKS = 1200;

    @TempDir
    private Path folder = Path.of("");

    private final LiveRuns runs = new LiveRuns(1);
    private final List<ScenarioOnPage> scenarios = new ArrayList<>();

    @BeforeEach
    void read() throws IOException, ScenarioProblems {
        scenarios.add(ScenarioOnPage.read(PageFixture.write(folder, MANY)));
    }

    @AfterEach
    void close() {
        runs.close();
    }

    private LiveRun run(String snr) throws ScenarioProblems {
        Map<String, String> setting = Map.of("far.snr", snr);
        return runs.keep(setting, scenarios.get(0).run(setting));
    }

    @Test
    void theRunThatNobodyLooksAtRests() throws ScenarioProblems, InterruptedException {
        LiveRun left = run("9 dB");
        assertTrue(runs.watch("page", List.of(left)));
        awaitTrials(left, 20);
        LiveRun next = run("12 dB");
        assertTrue(runs.watch("page", List.of(next)));
        awaitTrials(next, 4);
        int trials = left.trialsDone();
        awaitTrials(next, trials + 20);
        assertEquals(trials, left.trialsDone(), "the old run is cancelled when a control changes");
        assertTrue(runs.watch("page", List.of(left)));
        awaitTrials(left, trials + 1);
    }

    @Test
    void twoSettingsAdvanceTogether() throws ScenarioProblems, InterruptedException {
        LiveRun first = run("9 dB");
        LiveRun second = run("12 dB");
        assertTrue(runs.watch("page", List.of(first, second)));
        awaitTrials(second, 100);
        int one = first.trialsDone();
        int other = second.trialsDone();
        assertTrue(Math.abs(one - other) <= Math.max(one, other) / 4 + 10, one + " and " + other);
    }

    @Test
    void whatIsSeenIsTheStudyOfSoManyTrials() throws ScenarioProblems, InterruptedException {
        LiveRun run = run("9 dB");
        assertTrue(runs.watch("page", List.of(run)));
        awaitTrials(run, 30);
        LiveRun.Seen seen = run.seen().orElseThrow();
        int trials = seen.result().trialsDone();
        assertEquals(
                org.ionohaul.analysis.StudySummary.of(StudyRunner.of(scenarios
                                .get(0)
                                .with(Map.of("far.snr", "9 dB"))
                                .scenario()
                                .tried(trials))
                        .run()),
                seen.summary());
    }

    @Test
    void aPageThatAsksNoMoreIsForgotten() throws ScenarioProblems {
        LiveRun run = run("9 dB");
        for (int i = 0; i < LiveRuns.MOST_PAGES; i++) {
            assertTrue(runs.watch("page " + i, List.of(run)));
        }
        assertFalse(runs.watch("one more", List.of(run)));
        for (int i = 0; i < 6; i++) {
            runs.strike();
            assertTrue(runs.watch("page 0", List.of(run)), "that still asks");
        }
        for (int i = 1; i < LiveRuns.MOST_PAGES; i++) {
            assertTrue(runs.watch("one more " + i, List.of(run)));
        }
        assertFalse(runs.watch("too many", List.of(run)));
    }

    @Test
    void soManyRunsAreKeptAndThoseLookedAtStay() throws ScenarioProblems {
        LiveRun watched = run("1 dB");
        assertTrue(runs.watch("page", List.of(watched)));
        for (int i = 0; i < 3 * LiveRuns.MOST_RUNS; i++) {
            run((2 + i) + " dB");
        }
        long kept = 0;
        for (int i = 0; i < 3 * LiveRuns.MOST_RUNS; i++) {
            kept += runs.of(Map.of("far.snr", (2 + i) + " dB")).isPresent() ? 1 : 0;
        }
        assertEquals(LiveRuns.MOST_RUNS - 1, kept);
        assertTrue(runs.of(Map.of("far.snr", "1 dB")).isPresent());
    }

    private static void awaitTrials(LiveRun run, int trials) throws InterruptedException {
        for (int i = 0; i < LOOKS && run.trialsDone() < trials; i++) {
            Thread.sleep(100);
        }
        assertTrue(run.trialsDone() >= trials, run.failure().orElse("hangs"));
    }
}
