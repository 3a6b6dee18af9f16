package org.ionohaul.rare;

import org.ionohaul.random.TrialStreams;

/** How near a trial comes to what is rare. */
@FunctionalInterface
public interface Score {
    /**
     * Runs a trial; called from several threads at once, must depend on its chance alone.
     *
     * @return the greater, the nearer; infinite if it happened
     */
    double of(TrialStreams chance);
}
