package org.ionohaul.study;

import java.util.List;
import org.ionohaul.session.SessionResult;

/** Runs one trial: every case with every mode under one sky. */
@FunctionalInterface
public interface TrialSource {
    /**
     * Returns what each session came to: for each transfer, for each of its directions, for each mode, in the
     * scenario's order. Called from several threads at once; must depend on the trial's number alone.
     *
     * @param trial the trial's number, zero or more
     */
    List<SessionResult> run(long trial);
}
