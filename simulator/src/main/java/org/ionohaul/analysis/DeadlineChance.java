package org.ionohaul.analysis;

import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.Proportion;

/**
 * How likely everything is delivered by a deadline.
 *
 * @param deadlineSeconds the deadline, in seconds after pressing send
 * @param count how many of how many trials kept it
 * @param chance their share, with interval
 * @param limits what kept the others
 */
public record DeadlineChance(double deadlineSeconds, Proportion count, Estimate chance, Limits limits) {
    /** From so many late trials of all on it is told what kept them. */
    private static final double LEAST_LATE = 0.1;

    /**
     * Returns the share of trials that keep it at least, which holds in 95 of 100 studies, whichever mode is picked: exact and
     * one-sided.
     *
     * @param modes among how many modes is picked (Bonferroni)
     */
    public double safeShare(int modes) {
        double errorRate = (1 - Estimate.CONFIDENCE) / modes;
        return count.exact(1 - 2 * errorRate).low();
    }

    /** Returns whether a good part of the trials were late, and something kept more of them than the deadline. */
    public boolean isLimitedOtherwise() {
        return 1 - count.share() >= LEAST_LATE
                && limits.largest().filter(it -> it != Limit.DEADLINE).isPresent();
    }
}
