package org.ionohaul.rare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.SessionTrace;
import org.ionohaul.statistics.Proportion;
import org.ionohaul.study.TrialPool;
import org.ionohaul.trial.Trials;
import org.junit.jupiter.api.Test;

/** A real session under the demo's sky with a weaker far end: fading, visitors, uncertain inputs and all. */
final class MissedDeadlineTest {
    /** So near that counting is exact enough to judge by: two levels lie before it, and 1 in 40 misses it. */
    private static final double DEADLINE_SECONDS = 120;

    private static final int COUNTED = 6000;
    private static final int TREES = 3000;

    /** A right program oversteps this once in 16,000 comparisons. */
    private static final double STANDARD_ERRORS = 4;

    /** Counted under another seed, so that the two share no chance. */
    @Test
    void aMissIsAsRareAsCountingSays() throws ScenarioProblems {
        Scenario scenario = demo("7");
        Transfer roster = scenario.transfers().get(1);
        Mode mode = scenario.modes().get(0);
        Trials trials = new Trials(scenario.sending(List.of(roster), DEADLINE_SECONDS));
        TrialPool pool = TrialPool.of(2);
        long missed = pool
                .run(
                        COUNTED,
                        trial -> trials.run(roster, Direction.UPLOAD, mode, trial, SessionTrace.NONE)
                                .deliveredNanos()
                                .isPresent())
                .stream()
                .filter(isThrough -> !isThrough)
                .count();
        Score score = new MissedDeadline(demo("41"), roster, Direction.UPLOAD, mode, DEADLINE_SECONDS);
        Splitting splitting = new Splitting(score, 41, pool);
        RareChance found =
                splitting.chance(splitting.ladder().orElseThrow(), TREES).orElseThrow();
        double share = new Proportion(Math.toIntExact(missed), COUNTED).share();
        double error = Math.hypot(Math.sqrt(share / COUNTED), found.standardError());
        assertTrue(
                STANDARD_ERRORS * error < share / 2, "half as often or half again would show: " + error + ", " + share);
        assertTrue(found.isTold(), found::toString);
        assertEquals(share, found.chance().value(), STANDARD_ERRORS * error);
    }

    /** Chance in pieces is the same chance whenever it is asked for, and drawn anew throughout it is another. */
    @Test
    void aTrialDependsOnItsPiecesAlone() throws ScenarioProblems {
        Scenario scenario = demo("41");
        Score score = new MissedDeadline(
                scenario,
                scenario.transfers().get(1),
                Direction.UPLOAD,
                scenario.modes().get(0),
                DEADLINE_SECONDS);
        TrialStreams pieces = new TrialStreams(41, 5).inPieces();
        TrialStreams moved = pieces.redrawn(1, 0.5).redrawn(2, 0.25);
        assertEquals(score.of(moved), score.of(pieces.redrawn(1, 0.5).redrawn(2, 0.25)));
        assertEquals(score.of(moved.redrawn(3, 1)), score.of(pieces.redrawn(3, 1)));
    }

    private static Scenario demo(String seed) throws ScenarioProblems {
        return ScenarioReader.read(
                SourceFiles.DISK,
                Path.of("../scenarios/river-watch.toml"),
                Map.of("seed", seed, "far.snr", "10 dB ± 4 dB"));
    }
}
