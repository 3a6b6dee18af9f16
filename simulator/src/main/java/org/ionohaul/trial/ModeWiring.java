package org.ionohaul.trial;

import java.util.OptionalInt;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Passband;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.Sky;
import org.ionohaul.link.Chances;
import org.ionohaul.link.Ether;
import org.ionohaul.link.LinkParts;
import org.ionohaul.link.ModeSpec;
import org.ionohaul.link.PairEther;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.rate.DesignRates;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.Cargo;
import org.ionohaul.session.SessionParts;
import org.ionohaul.session.SessionTrace;

/** Puts the parts of a session together as one mode has them. */
final class ModeWiring {
    /** Others count as heard when they stand one S-unit (6 dB, IARU Region 1 R.1) over the floor. */
    static final double OCCUPIED_OVER_FLOOR_DB = 6;

    private final Scenario scenario;
    private final Mode mode;
    private final Passband passband;
    private final LinkPlan plan;
    private final DesignRates rates;

    ModeWiring(Scenario scenario, Mode mode) {
        this.scenario = scenario;
        this.mode = mode;
        this.passband = mode.emission().passband();
        this.plan = new LinkPlan(scenario, mode);
        ModeSpec spec = plan.spec();
        this.rates = plan.timing(spec).designRates(BenchCurves.of(spec.signals()));
    }

    /** Returns how both ends hear each other under a sky. */
    ModeUnderSky under(Sky sky) {
        return new ModeUnderSky(sky, plan.spec(), reception(sky, End.NEAR), reception(sky, End.FAR));
    }

    /** Returns the same for many sessions that have much in common: what becomes of a burst is worked out once for all of them. */
    ModeUnderSky rememberingUnder(Sky sky) {
        Reception atNear = reception(sky, End.NEAR);
        Reception atFar = reception(sky, End.FAR);
        return new ModeUnderSky(sky, plan.remembering(atNear, atFar), atNear, atFar);
    }

    private Reception reception(Sky sky, End receiver) {
        return sky.reception(receiver, passband);
    }

    /**
     * Returns the parts of a session.
     *
     * @param moment when it begins and which of the mode's sessions on this sky it is
     */
    SessionParts parts(
            ModeUnderSky under,
            TrialStreams streams,
            Transfer transfer,
            Direction direction,
            SessionTrace trace,
            SessionMoment moment) {
        Chances chances = chances(streams, moment.repeat());
        Cargo cargo = Cargo.from(
                        direction.sender(),
                        transfer.files().stream().map(PayloadFile::bytes).toList())
                .acceptingErrors(transfer.acceptsErrors());
        return new SessionParts(
                new LinkParts(under.spec(), plan.radio(End.NEAR), plan.radio(End.FAR), chances),
                ether(under, moment),
                () -> RatePolicies.of(
                        mode.ratePolicy(),
                        rates,
                        chances.policy(),
                        () -> new OmniscientPolicy(yardstick(under.sky(), direction, moment))),
                mode.session(),
                cargo,
                patienceNanos(),
                trace);
    }

    /**
     * Returns the parts of a session on a channel that others use as well.
     *
     * @param spec what all of them work
     * @param dials which end of the scenario's pair dials
     * @param sky that of the pair
     * @param callsInARow how often it calls before it gives up, without dialling anew; empty for as the mode has it
     */
    SessionParts parts(
            ModeSpec spec,
            End dials,
            Sky sky,
            Chances chances,
            OptionalInt callsInARow,
            Cargo cargo,
            Ether ether,
            SessionTrace trace) {
        return new SessionParts(
                new LinkParts(spec, plan.radio(dials), plan.radio(dials.other()), chances),
                ether,
                () -> RatePolicies.of(
                        mode.ratePolicy(),
                        rates,
                        chances.policy(),
                        () -> new OmniscientPolicy(yardstick(sky, Direction.UPLOAD, SessionMoment.FIRST))),
                callsInARow.isPresent() ? mode.session().calling(callsInARow.getAsInt()) : mode.session(),
                cargo,
                Long.MAX_VALUE,
                trace);
    }

    /** Returns what all stations of a net work, with bursts of their own: they belong to one thread. */
    ModeSpec spec() {
        return plan.spec();
    }

    private PairEther ether(ModeUnderSky under, SessionMoment moment) {
        return new PairEther(
                moment.heard(under.atNear()),
                moment.heard(under.atFar()),
                (end, fromNanos, untilNanos) -> under.sky()
                        .isOccupied(
                                end,
                                moment.startNanos() + fromNanos,
                                moment.startNanos() + untilNanos,
                                OCCUPIED_OVER_FLOOR_DB),
                scenario.propagationNanos());
    }

    /** Returns what each data rate would really bring to the receiver of the data. */
    Yardstick yardstick(Sky sky, Direction direction, SessionMoment moment) {
        ModeSpec spec = plan.spec();
        Reception data = moment.heard(reception(sky, direction.receiver()));
        return new Yardstick(plan.timing(spec), new ExpectedPayload(spec.signals(), data, spec.arq()));
    }

    private long patienceNanos() {
        double seconds = scenario.near().patienceSeconds();
        return Double.isInfinite(seconds) ? Long.MAX_VALUE : Nanos.of(seconds);
    }

    /** Returns the chance in one of several sessions of the mode. */
    Chances chances(TrialStreams streams, long repeat) {
        int element = StreamElement.of(mode.name());
        return new Chances(
                streams.open(Purpose.DETECTION, element, repeat),
                streams.open(Purpose.DECODING, element, repeat),
                streams.open(Purpose.SNR_ESTIMATE, element, repeat),
                streams.open(Purpose.DIALLING, element, repeat),
                streams.open(Purpose.POLICY, element, repeat),
                streams.open(Purpose.REPLIES, element, repeat));
    }
}
