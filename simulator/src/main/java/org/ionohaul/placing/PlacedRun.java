package org.ionohaul.placing;

import org.ionohaul.fieldlog.LoggedRun;

/**
 * A logged run among simulated ones.
 *
 * @param run the run
 * @param rank where it lies, from quick to slow
 * @param deliveredShare share of the simulated runs that deliver at all, from 0 to 1
 * @param middleSeconds time of the simulated run that half of all are quicker than, of what was timed; infinite if fewer deliver
 * @param tenthSeconds the same for one tenth
 * @param ninthSeconds the same for nine tenths
 * @param isReadUsed whether it was simulated at a level that was read during the run
 */
public record PlacedRun(
        LoggedRun run,
        RankSpan rank,
        double deliveredShare,
        double middleSeconds,
        double tenthSeconds,
        double ninthSeconds,
        boolean isReadUsed) {}
