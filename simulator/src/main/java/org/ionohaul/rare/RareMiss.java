package org.ionohaul.rare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.statistics.Proportion;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.ModeTrials;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.TrialPool;

/**
 * How often a mode misses a deadline, where that is too seldom for counting.
 *
 * @param deadlineSeconds after pressing send
 * @param counted how many of the study's trials missed it
 * @param found what splitting found; empty if it found no way to a miss
 */
public record RareMiss(
        Transfer transfer,
        Direction direction,
        Mode mode,
        double deadlineSeconds,
        Proportion counted,
        Optional<RareChance> found) {
    /** What more of the trials missed is counted well enough. */
    public static final double RARE = 0.05;

    /** Keeps the chance of splitting apart from that of the study's trials. */
    private static final long OTHER_SEED = 0x5EED_0F_4A2EL;

    /**
     * Looks at every deadline that a mode misses on at most one in twenty of a study's trials.
     *
     * @param result a study with at least one trial done
     * @param trees how many trials to begin with for each, 2 or more
     * @param pool runs the trials
     * @return what was looked at to its end, in the study's order; all unless the pool is cancelled
     */
    public static List<RareMiss> of(StudyResult result, int trees, TrialPool pool) {
        List<RareMiss> misses = new ArrayList<>();
        for (CaseTrials trials : result.cases()) {
            for (double deadline : trials.transfer().deadlinesSeconds()) {
                for (ModeTrials mode : trials.modes()) {
                    Proportion counted = counted(mode, deadline);
                    if (counted.share() > RARE) {
                        continue;
                    }
                    Optional<RareChance> found = found(result, trials, mode, deadline, trees, pool);
                    if (pool.isCancelled().getAsBoolean()) {
                        return misses;
                    }
                    misses.add(
                            new RareMiss(trials.transfer(), trials.direction(), mode.mode(), deadline, counted, found));
                }
            }
        }
        return misses;
    }

    private static Proportion counted(ModeTrials mode, double deadline) {
        double[] seconds = mode.completionSeconds();
        return new Proportion(
                (int) Arrays.stream(seconds).filter(it -> !(it <= deadline)).count(), seconds.length);
    }

    private static Optional<RareChance> found(
            StudyResult result, CaseTrials trials, ModeTrials mode, double deadline, int trees, TrialPool pool) {
        Score score =
                new MissedDeadline(result.scenario(), trials.transfer(), trials.direction(), mode.mode(), deadline);
        Splitting splitting = new Splitting(score, result.scenario().seed() ^ OTHER_SEED, pool);
        return splitting.ladder().flatMap(ladder -> splitting.chance(ladder, trees));
    }
}
