package org.ionohaul.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.channel.Sky;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Draws;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.Session;
import org.ionohaul.session.SessionResult;
import org.ionohaul.session.SessionTrace;

/**
 * All trials of a scenario, each built afresh from its number.
 *
 * <p>Every case and mode of a trial meets the same sky, so that what differs is the mode. A trial depends on the scenario,
 * its seed and its number alone: trials may run in any order and on any thread.
 */
public final class Trials {
    private static final double WORTH_REMEMBERING = 0.1;

    private final Scenario scenario;
    private final TrialSkies skies;
    private final long horizonNanos;
    private final List<ModeWiring> wirings;
    private final boolean haveMuchInCommon;

    /** Prepares what the trials of a scenario have in common. */
    public Trials(Scenario scenario) {
        this.scenario = scenario;
        this.skies = new TrialSkies(scenario);
        this.horizonNanos = Nanos.of(scenario.horizonSeconds());
        this.wirings = scenario.modes().stream()
                .map(mode -> new ModeWiring(scenario, mode))
                .toList();
        this.haveMuchInCommon = haveMuchInCommon(scenario.transfers());
    }

    /** Sessions go the same way until the smaller file is through: worth remembering if that is more than a small part of all. */
    private static boolean haveMuchInCommon(List<Transfer> transfers) {
        long all = transfers.stream().mapToLong(Transfer::totalBytes).sum();
        long largest = transfers.stream().mapToLong(Transfer::totalBytes).max().orElse(0);
        return all - largest > WORTH_REMEMBERING * all;
    }

    /**
     * Runs one trial of every case with every mode.
     *
     * @param trial the trial's number, zero or more
     * @return for each transfer, for each of its directions, for each mode, in the scenario's order
     */
    public List<SessionResult> run(long trial) {
        Sky sky = skies.sky(trial);
        List<List<SessionResult>> byMode = wirings.stream()
                .map(it -> sessions(it, haveMuchInCommon ? it.rememberingUnder(sky) : it.under(sky), trial))
                .toList();
        return IntStream.range(0, byMode.get(0).size())
                .boxed()
                .flatMap(session -> byMode.stream().map(it -> it.get(session)))
                .toList();
    }

    /** Returns a mode's sessions with each transfer in each of its directions. */
    private List<SessionResult> sessions(ModeWiring wiring, ModeUnderSky under, long trial) {
        List<SessionResult> results = new ArrayList<>();
        for (Transfer transfer : scenario.transfers()) {
            for (Direction direction : transfer.directions()) {
                results.add(session(wiring, under, trial, transfer, direction, SessionTrace.NONE));
            }
        }
        return results;
    }

    /**
     * Runs one trial of one case with one mode while somebody watches; the result is that of {@link #run(long)}.
     *
     * @param mode one of the scenario's modes
     * @param trial the trial's number, zero or more
     * @param trace who watches
     */
    public SessionResult run(Transfer transfer, Direction direction, Mode mode, long trial, SessionTrace trace) {
        ModeWiring wiring = wirings.get(scenario.modes().indexOf(mode));
        return session(wiring, wiring.under(skies.sky(trial)), trial, transfer, direction, trace);
    }

    /**
     * Runs one session under a sky of the caller's own, with chance of its own.
     *
     * @param transfer what is sent; need not be the scenario's
     * @param mode one of the scenario's modes
     * @param conditions the sky before its random processes run
     * @param chance seeds all of its random processes, also when trials share the rest
     */
    public SessionResult run(
            Transfer transfer, Direction direction, Mode mode, SkyConditions conditions, TrialStreams chance) {
        ModeWiring wiring = wirings.get(scenario.modes().indexOf(mode));
        Sky sky = new Sky(conditions, chance);
        return new Session(wiring.parts(
                        wiring.under(sky), chance, transfer, direction, SessionTrace.NONE, SessionMoment.FIRST))
                .run(horizonNanos);
    }

    /**
     * Runs one trial of one case with one mode and returns the airtime, in nanoseconds, that its overs lost by not having
     * the best data rate of their moment.
     *
     * @param mode one of the scenario's modes
     * @param trial the trial's number, zero or more
     */
    public long wrongRateNanos(Transfer transfer, Direction direction, Mode mode, long trial) {
        ModeWiring wiring = wirings.get(scenario.modes().indexOf(mode));
        Sky sky = skies.sky(trial);
        WrongRate watch = new WrongRate(wiring.yardstick(sky, direction, SessionMoment.FIRST));
        session(wiring, wiring.under(sky), trial, transfer, direction, watch);
        return watch.lostNanos();
    }

    /**
     * Returns a trial's sky for sessions one after another: the first, begun at once, is that of {@link #run(long)}.
     *
     * @param trial the trial's number, zero or more
     */
    public SharedSky sharedSky(long trial) {
        return sharedSky(trial, new UncertainDraws(skies.streams(trial)));
    }

    /**
     * Returns a sky whose fading, slow variation, impulses and visitors are those of a trial, under uncertain inputs that are
     * drawn elsewhere.
     *
     * @param trial the trial's number, zero or more
     * @param draws where the uncertain inputs come from
     */
    public SharedSky sharedSky(long trial, Draws draws) {
        return new SharedSky(scenario, wirings, horizonNanos, skies.sky(trial, draws), skies.streams(trial));
    }

    /** Returns the trials' skies. */
    public TrialSkies skies() {
        return skies;
    }

    private SessionResult session(
            ModeWiring wiring,
            ModeUnderSky under,
            long trial,
            Transfer transfer,
            Direction direction,
            SessionTrace trace) {
        return new Session(wiring.parts(under, skies.streams(trial), transfer, direction, trace, SessionMoment.FIRST))
                .run(horizonNanos);
    }
}
