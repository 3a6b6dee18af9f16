package org.ionohaul.trial;

import org.ionohaul.channel.End;
import org.ionohaul.channel.Passband;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.Sky;
import org.ionohaul.link.Chances;
import org.ionohaul.link.LinkParts;
import org.ionohaul.link.ModeSpec;
import org.ionohaul.link.PairEther;
import org.ionohaul.link.Radio;
import org.ionohaul.link.StationTimes;
import org.ionohaul.link.Timing;
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
    private static final double OCCUPIED_OVER_FLOOR_DB = 6;

    private final Scenario scenario;
    private final Mode mode;
    private final Passband passband;
    private final DesignRates rates;

    ModeWiring(Scenario scenario, Mode mode) {
        this.scenario = scenario;
        this.mode = mode;
        this.passband = mode.emission().passband();
        ModeSpec spec = spec();
        this.rates = timing(spec).designRates(BenchCurves.of(spec.signals()));
    }

    SessionParts parts(Sky sky, TrialStreams streams, Transfer transfer, Direction direction, SessionTrace trace) {
        Chances chances = chances(streams);
        Cargo cargo = Cargo.from(
                direction.sender(),
                transfer.files().stream().map(PayloadFile::bytes).toList());
        return new SessionParts(
                new LinkParts(spec(), radio(End.NEAR), radio(End.FAR), chances),
                ether(sky),
                () -> RatePolicies.of(
                        mode.ratePolicy(),
                        rates,
                        chances.policy(),
                        () -> new OmniscientPolicy(yardstick(sky, direction))),
                mode.session(),
                cargo,
                patienceNanos(),
                trace);
    }

    private PairEther ether(Sky sky) {
        return new PairEther(
                sky.reception(End.NEAR, passband),
                sky.reception(End.FAR, passband),
                (end, fromNanos, untilNanos) -> sky.isOccupied(end, fromNanos, untilNanos, OCCUPIED_OVER_FLOOR_DB),
                scenario.propagationNanos());
    }

    /** Returns what both stations of a link work, with bursts of its own: they belong to one thread. */
    ModeSpec spec() {
        return new ModeSpec(mode.signals(), mode.arq(), mode.ratePolicy());
    }

    Timing timing(ModeSpec spec) {
        return new Timing(spec, times(End.NEAR), times(End.FAR), scenario.propagationNanos());
    }

    /** Returns what each data rate would really bring to the receiver of the data. */
    Yardstick yardstick(Sky sky, Direction direction) {
        ModeSpec spec = spec();
        Reception data = sky.reception(direction.receiver(), passband);
        return new Yardstick(timing(spec), new ExpectedPayload(spec.signals(), data, spec.arq()));
    }

    private Radio radio(End end) {
        Radio own = scenario.station(end).radio();
        return new Radio(times(end), own.foldBack(), own.busyDetectionNanos());
    }

    private StationTimes times(End end) {
        return mode.times(scenario.station(end).radio().times());
    }

    private long patienceNanos() {
        double seconds = scenario.near().patienceSeconds();
        return Double.isInfinite(seconds) ? Long.MAX_VALUE : Nanos.of(seconds);
    }

    private Chances chances(TrialStreams streams) {
        int element = StreamElement.of(mode.name());
        return new Chances(
                streams.open(Purpose.DETECTION, element),
                streams.open(Purpose.DECODING, element),
                streams.open(Purpose.SNR_ESTIMATE, element),
                streams.open(Purpose.DIALLING, element),
                streams.open(Purpose.POLICY, element));
    }
}
