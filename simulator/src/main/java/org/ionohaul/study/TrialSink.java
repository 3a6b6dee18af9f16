package org.ionohaul.study;

import java.util.List;

/**
 * Where the results of trials go, in order of trial number.
 *
 * @param <R> what a trial comes to
 */
interface TrialSink<R> {
    /** Returns how many trials there are. */
    int trials();

    /** Returns how many trials are best added at once, 1 or more. */
    int trialsABlock();

    /**
     * Adds trials.
     *
     * @param block of each trial its result, perhaps none
     */
    void append(List<R> block);

    /** Sees that what was added outlives a power cut, if it is kept at all. */
    void force();
}
