package org.ionohaul.analysis;

import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.SessionResult;
import org.ionohaul.session.SessionTrace;
import org.ionohaul.trial.SkyView;
import org.ionohaul.trial.TrialSkies;
import org.ionohaul.trial.Trials;

/** Runs a trial of a study again, for what its row does not keep. */
public interface Rerun {
    /** Returns what a session of a trial came to. */
    SessionResult session(Transfer transfer, Direction direction, Mode mode, long trial);

    /** Returns the sky of a trial, for so many seconds from pressing send. */
    SkyView sky(long trial, double seconds);

    /** Returns that of a scenario. */
    static Rerun of(Scenario scenario) {
        Trials trials = new Trials(scenario);
        TrialSkies skies = new TrialSkies(scenario);
        return new Rerun() {
            @Override
            public SessionResult session(Transfer transfer, Direction direction, Mode mode, long trial) {
                return trials.run(transfer, direction, mode, trial, SessionTrace.NONE);
            }

            @Override
            public SkyView sky(long trial, double seconds) {
                return SkyView.of(scenario, trial, skies.sky(trial), seconds);
            }
        };
    }
}
