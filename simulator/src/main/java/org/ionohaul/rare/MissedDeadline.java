package org.ionohaul.rare;

import java.util.List;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.SessionResult;
import org.ionohaul.trial.Trials;
import org.ionohaul.trial.UncertainDraws;

/** How late a file is: seconds until its receiver holds it, infinite if it misses its deadline. */
public final class MissedDeadline implements Score {
    private final Scenario scenario;
    private final Trials trials;
    private final Transfer transfer;
    private final Direction direction;
    private final Mode mode;
    private final double deadlineSeconds;

    /**
     * Prepares.
     *
     * @param scenario with the stations, the sky and the mode
     * @param transfer what is sent; need not be the scenario's
     * @param mode one of the scenario's modes
     * @param deadlineSeconds after pressing send, positive, at most the scenario's horizon
     */
    public MissedDeadline(
            Scenario scenario, Transfer transfer, Direction direction, Mode mode, double deadlineSeconds) {
        // What comes after the deadline changes nothing, and other modes take long to prepare.
        this.scenario = scenario.sending(scenario.transfers(), deadlineSeconds).racing(List.of(mode));
        this.trials = new Trials(this.scenario);
        this.transfer = transfer;
        this.direction = direction;
        this.mode = mode;
        this.deadlineSeconds = deadlineSeconds;
    }

    @Override
    public double of(TrialStreams chance) {
        SessionResult result =
                trials.run(transfer, direction, mode, scenario.sky().conditions(new UncertainDraws(chance)), chance);
        double seconds = result.deliveredNanos().isPresent()
                ? result.deliveredNanos().getAsLong() / 1e9
                : Double.POSITIVE_INFINITY;
        return seconds <= deadlineSeconds ? seconds : Double.POSITIVE_INFINITY;
    }
}
