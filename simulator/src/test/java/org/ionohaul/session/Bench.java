package org.ionohaul.session;

import java.util.List;
import org.ionohaul.channel.DerivedReception;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Reception;
import org.ionohaul.link.ArqRules;
import org.ionohaul.link.ArqRules.AnswerToSilence;
import org.ionohaul.link.ArqScheme;
import org.ionohaul.link.Chances;
import org.ionohaul.link.ChannelWatch;
import org.ionohaul.link.LinkParts;
import org.ionohaul.link.ModeSpec;
import org.ionohaul.link.PairEther;
import org.ionohaul.link.Radio;
import org.ionohaul.link.Signals;
import org.ionohaul.link.StationTimes;
import org.ionohaul.link.Timing;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.rate.DesignRates;
import org.ionohaul.rate.FixedPolicy;
import org.ionohaul.rate.RatePolicyRules;
import org.ionohaul.trial.BenchCurves;
import org.ionohaul.trial.RatePolicies;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.SteadyReception;
import org.ionohaul.waveform.Waveform;

/** A test bench: a session whose bursts get lost by a given chance, with everything else at plain values. */
final class Bench {
    static final long MILLI = 1_000_000L;
    static final long SECOND = 1000 * MILLI;
    static final long HOUR = 3600 * SECOND;

    ArqScheme scheme = ArqScheme.SELECTIVE_REPEAT;
    int window = 8;
    int shortOver = 8;
    int longOver = 8;
    long longestOver = HOUR;
    Combining combining = Combining.NONE;
    int store = 0;
    AnswerToSilence answerToSilence = AnswerToSilence.REPEAT;
    int silencesToLost = 5;
    boolean listensFirst = false;
    long margin = 0;
    long cycle = 0;
    List<? extends Waveform> dataRates = List.of(PlainWaveform.certain(100, 200 * MILLI, 100 * MILLI));
    Waveform acknowledgement = PlainWaveform.certain(0, 50 * MILLI, 50 * MILLI);
    Waveform call = PlainWaveform.certain(0, 500 * MILLI, 500 * MILLI);
    Waveform control = PlainWaveform.certain(0, 100 * MILLI, 100 * MILLI);
    Reception atNear = new Listener(End.NEAR);
    Reception atFar = new Listener(End.FAR);
    ChannelWatch watch = ChannelWatch.ALWAYS_CLEAR;
    StationTimes near = new StationTimes(0, 0, 0, 10 * MILLI);
    StationTimes far = new StationTimes(0, 0, 0, 10 * MILLI);
    long propagation = 0;
    RatePolicyRules ratePolicy = new RatePolicyRules.Fixed(1);
    SessionRules rules = new SessionRules(3, SECOND, 1, 3, true, 2, true, 10 * SECOND);
    Cargo cargo = Cargo.from(End.NEAR, List.of(1000L));
    long patience = Long.MAX_VALUE;
    SessionTrace trace = SessionTrace.NONE;

    SessionResult run(long trial) {
        return run(trial, 1000 * HOUR);
    }

    SessionResult run(long trial, long horizonNanos) {
        return run(new TrialStreams(20, trial), horizonNanos);
    }

    SessionResult run(TrialStreams streams, long horizonNanos) {
        Chances chances = chances(streams);
        ModeSpec mode =
                new ModeSpec(new Signals(List.copyOf(dataRates), acknowledgement, call, control), arq(), ratePolicy);
        DesignRates rates = new Timing(mode, near, far, propagation).designRates(BenchCurves.of(mode.signals()));
        return new Session(new SessionParts(
                        new LinkParts(mode, Radio.of(near), Radio.of(far), chances),
                        new PairEther(atNear, atFar, watch, propagation),
                        () -> RatePolicies.of(ratePolicy, rates, chances.policy(), () -> new FixedPolicy(1)),
                        rules,
                        cargo,
                        patience,
                        trace))
                .run(horizonNanos);
    }

    private ArqRules arq() {
        return new ArqRules(
                scheme,
                window,
                shortOver,
                longOver,
                longestOver,
                combining,
                store,
                answerToSilence,
                silencesToLost,
                listensFirst,
                margin,
                cycle);
    }

    private static Chances chances(TrialStreams streams) {
        return new Chances(
                streams.open(Purpose.DETECTION, 0),
                streams.open(Purpose.DECODING, 0),
                streams.open(Purpose.SNR_ESTIMATE, 0),
                streams.open(Purpose.DIALLING, 0),
                streams.open(Purpose.POLICY, 0),
                streams.open(Purpose.REPLIES, 0));
    }

    /** A reception without a sky: tells the waveforms of these tests only who listens. */
    record Listener(End end) implements DerivedReception {
        @Override
        public Reception original() {
            return new SteadyReception(0);
        }
    }
}
