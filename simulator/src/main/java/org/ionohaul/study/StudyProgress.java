package org.ionohaul.study;

/** Hears how far a study is. */
@FunctionalInterface
public interface StudyProgress {
    /**
     * Called after each trial, from one thread at a time, with rising counts.
     *
     * @param trialsDone trials finished so far
     * @param trialsAsked trials to be done in all
     */
    void onTrialDone(int trialsDone, int trialsAsked);
}
