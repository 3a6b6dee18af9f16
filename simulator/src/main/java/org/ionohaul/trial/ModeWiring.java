package org.ionohaul.trial;

import org.ionohaul.channel.End;
import org.ionohaul.channel.Passband;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.Sky;
import org.ionohaul.link.Chances;
import org.ionohaul.link.LinkParts;
import org.ionohaul.link.ModeSpec;
import org.ionohaul.link.PairEther;
import org.ionohaul.link.Signals;
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
import org.ionohaul.waveform.BurstShape;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.Waveform;
import org.ionohaul.waveform.Waveforms;

/** Puts the parts of a session together as one mode has them. */
final class ModeWiring {
    private static final double LIGHT_METRES_PER_SECOND = 299_792_458;

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

    /**
     * Returns the parts of a session.
     *
     * @param moment when it begins and which of the mode's sessions on this sky it is
     */
    SessionParts parts(
            Sky sky,
            TrialStreams streams,
            Transfer transfer,
            Direction direction,
            SessionTrace trace,
            SessionMoment moment) {
        Chances chances = chances(streams, moment.repeat());
        Cargo cargo = Cargo.from(
                direction.sender(),
                transfer.files().stream().map(PayloadFile::bytes).toList());
        return new SessionParts(
                new LinkParts(spec(), times(End.NEAR), times(End.FAR), chances),
                ether(sky, moment),
                () -> RatePolicies.of(
                        mode.ratePolicy(),
                        rates,
                        chances.policy(),
                        () -> new OmniscientPolicy(yardstick(sky, direction, moment))),
                mode.session(),
                cargo,
                patienceNanos(),
                trace);
    }

    private PairEther ether(Sky sky, SessionMoment moment) {
        return new PairEther(
                moment.heard(sky.reception(End.NEAR, passband)),
                moment.heard(sky.reception(End.FAR, passband)),
                (end, atNanos) -> sky.isOccupied(end, moment.startNanos() + atNanos, OCCUPIED_OVER_FLOOR_DB),
                propagationNanos());
    }

    private long propagationNanos() {
        return Nanos.of(scenario.distanceMetres() / LIGHT_METRES_PER_SECOND);
    }

    /** Returns what both stations of a link work, with bursts of its own: they belong to one thread. */
    ModeSpec spec() {
        return new ModeSpec(signals(), mode.arq(), mode.ratePolicy());
    }

    Timing timing(ModeSpec spec) {
        return new Timing(spec, times(End.NEAR), times(End.FAR), propagationNanos());
    }

    /** Returns what each data rate would really bring to the receiver of the data. */
    Yardstick yardstick(Sky sky, Direction direction, SessionMoment moment) {
        ModeSpec spec = spec();
        Reception data = moment.heard(sky.reception(direction.receiver(), passband));
        return new Yardstick(timing(spec), new ExpectedPayload(spec.signals(), data, spec.arq()));
    }

    private Signals signals() {
        return new Signals(
                mode.dataRates().stream()
                        .map(dataRate -> waveform(dataRate, mode.arq().combining()))
                        .toList(),
                waveform(mode.acknowledgement(), Combining.NONE),
                waveform(mode.call(), Combining.NONE),
                waveform(mode.control(), Combining.NONE));
    }

    private Waveform waveform(BurstShape burst, Combining combining) {
        return Waveforms.of(burst, mode.emission(), combining);
    }

    private StationTimes times(End end) {
        StationTimes own = scenario.station(end).times();
        long processingNanos = Math.addExact(own.processingNanos(), Nanos.of(mode.processingSeconds()));
        return new StationTimes(own.hangNanos(), own.relayNanos(), own.recoveryNanos(), processingNanos);
    }

    private long patienceNanos() {
        double seconds = scenario.near().patienceSeconds();
        return Double.isInfinite(seconds) ? Long.MAX_VALUE : Nanos.of(seconds);
    }

    private Chances chances(TrialStreams streams, long repeat) {
        int element = StreamElement.of(mode.name());
        return new Chances(
                streams.open(Purpose.DETECTION, element, repeat),
                streams.open(Purpose.DECODING, element, repeat),
                streams.open(Purpose.SNR_ESTIMATE, element, repeat),
                streams.open(Purpose.DIALLING, element, repeat),
                streams.open(Purpose.POLICY, element, repeat));
    }
}
