package org.ionohaul.placing;

import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.statistics.OrderedSample;

/**
 * A logged run among simulated ones.
 *
 * @param run the run
 * @param rank where it lies, from quick to slow
 * @param times of the simulated runs, of what was timed, in seconds; infinite for those that never delivered
 * @param isSessionTimed whether the times are those of whole sessions, and not until delivered
 * @param isReadUsed whether it was simulated at a level that was read during the run
 */
public record PlacedRun(LoggedRun run, RankSpan rank, OrderedSample times, boolean isSessionTimed, boolean isReadUsed) {
    /** Returns the share of the simulated runs that deliver at all, from 0 to 1. */
    public double deliveredShare() {
        return times.atMost(Double.MAX_VALUE).share();
    }

    /** Returns the time that half of the simulated runs keep; infinite if fewer deliver. */
    public double middleSeconds() {
        return times.quantile(0.5);
    }

    /** Returns the time that one in ten keeps. */
    public double tenthSeconds() {
        return times.quantile(0.1);
    }

    /** Returns the time that nine of ten keep. */
    public double ninthSeconds() {
        return times.quantile(0.9);
    }
}
