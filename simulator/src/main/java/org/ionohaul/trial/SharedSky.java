package org.ionohaul.trial;

import java.util.List;
import org.ionohaul.channel.Sky;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.Session;
import org.ionohaul.session.SessionResult;
import org.ionohaul.session.SessionTrace;

/**
 * One trial's sky that goes on while sessions come and go on it: clock, trend, slow variation, fading and visitors. The
 * stations themselves begin each session afresh, with nothing left of the one before. Belongs to one thread.
 */
public final class SharedSky {
    private final Scenario scenario;
    private final List<ModeWiring> wirings;
    private final long horizonNanos;
    private final Sky sky;
    private final TrialStreams streams;

    SharedSky(Scenario scenario, List<ModeWiring> wirings, long horizonNanos, Sky sky, TrialStreams streams) {
        this.scenario = scenario;
        this.wirings = wirings;
        this.horizonNanos = horizonNanos;
        this.sky = sky;
        this.streams = streams;
    }

    /**
     * Runs one session. It depends on the trial and on what is said here alone, not on what ran before.
     *
     * @param mode one of the scenario's modes
     * @param repeat which of the mode's sessions on this sky it is, from 0: each has chances of its own
     * @param startNanos when the operator presses send, in nanoseconds since the trial began, zero or more
     * @return what it came to, in nanoseconds since it began; its horizon is the scenario's, counted from then
     */
    public SessionResult run(Mode mode, long repeat, Transfer transfer, Direction direction, long startNanos) {
        ModeWiring wiring = wirings.get(scenario.modes().indexOf(mode));
        return new Session(wiring.parts(
                        wiring.under(sky),
                        streams,
                        transfer,
                        direction,
                        SessionTrace.NONE,
                        new SessionMoment(startNanos, repeat)))
                .run(horizonNanos);
    }
}
