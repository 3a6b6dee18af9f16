package org.ionohaul.analysis;

import org.ionohaul.trial.TrialSky;

/** Where a study's skies are read off again. */
@FunctionalInterface
public interface SkySource {
    /**
     * Returns what a trial's sky comes to.
     *
     * @param trial the trial's number, zero or more
     * @param lengthSeconds how long to watch from pressing send, positive
     */
    TrialSky skyOf(long trial, double lengthSeconds);
}
