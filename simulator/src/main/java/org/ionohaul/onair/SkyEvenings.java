package org.ionohaul.onair;

import java.util.List;
import java.util.function.LongFunction;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.SessionResult;
import org.ionohaul.trial.SharedSky;
import org.ionohaul.trial.Trials;

/**
 * Evenings as a scenario describes them: each trial's sky is an evening's.
 *
 * @param trials the scenario's trials
 * @param modes those of its modes that are compared
 * @param transfer what is sent in each run
 * @param direction which way
 */
public record SkyEvenings(Trials trials, List<Mode> modes, Transfer transfer, Direction direction)
        implements LongFunction<Evening> {
    private static final double NANOS_A_SECOND = 1e9;

    @Override
    public Evening apply(long trial) {
        SharedSky sky = trials.sharedSky(trial);
        return (mode, repeat, startNanos) -> run(sky.run(modes.get(mode), repeat, transfer, direction, startNanos));
    }

    private static Run run(SessionResult result) {
        return new Run(
                result.deliveredNanos().isPresent()
                        ? result.deliveredNanos().getAsLong() / NANOS_A_SECOND
                        : Double.POSITIVE_INFINITY,
                result.endedNanos());
    }
}
