package org.ionohaul.link;

import java.util.List;
import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.SinrMeter;
import org.ionohaul.engine.Engine;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.rate.RatePolicyRules;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.SteadyReception;
import org.ionohaul.waveform.Waveform;

/** A link of plain parts: data rates that need 0, 5, 10, 15 dB and carry 10, 20, 40, 80 bytes, 0.1 s a frame. */
final class PlainLink {
    private static final long SECOND = 1_000_000_000L;

    private PlainLink() {}

    /** Returns what stations of such times that always use data rate 1 are made of, with chance of the test's own. */
    static LinkParts parts(StationTimes times) {
        return parts(times, rules(ArqScheme.SELECTIVE_REPEAT, false));
    }

    static LinkParts parts(StationTimes times, ArqRules arq) {
        return parts(Radio.of(times), arq);
    }

    static LinkParts parts(Radio radio, ArqRules arq) {
        Waveform single = new Threshold(0, -20);
        Signals signals = new Signals(
                List.of(new Threshold(10, 0), new Threshold(20, 5), new Threshold(40, 10), new Threshold(80, 15)),
                single,
                single,
                single);
        TrialStreams streams = new TrialStreams(3, 0);
        return new LinkParts(
                new ModeSpec(signals, arq, new RatePolicyRules.Fixed(1)),
                radio,
                radio,
                new Chances(
                        streams.open(Purpose.DETECTION, 0),
                        streams.open(Purpose.DECODING, 0),
                        streams.open(Purpose.SNR_ESTIMATE, 0),
                        streams.open(Purpose.DIALLING, 0),
                        streams.open(Purpose.POLICY, 0),
                        streams.open(Purpose.REPLIES, 0)));
    }

    static ArqRules rules(ArqScheme scheme, boolean listensFirst) {
        return new ArqRules(
                scheme,
                8,
                8,
                8,
                SECOND * 100,
                Combining.NONE,
                0,
                ArqRules.AnswerToSilence.REPEAT,
                5,
                listensFirst,
                0,
                0);
    }

    /** Returns a burst of frames of 0.1 s that need so much. */
    static Waveform threshold(int payloadBytes, double needDb) {
        return new Threshold(payloadBytes, needDb);
    }

    /** Returns two stations alone that hear each other at 0 dB. */
    static Link pair(LinkParts parts, long propagationNanos, LinkTrace trace) {
        Reception steady = new SteadyReception(0);
        Ether ether = new PairEther(steady, steady, ChannelWatch.ALWAYS_CLEAR, propagationNanos);
        return new Link(parts, new Medium(new Engine(), ether, 2), PairEther.NEAR, PairEther.FAR, trace);
    }

    /** Decodes within half a decibel around its need; evidence is the chance of it. */
    private record Threshold(int payloadBytes, double needDb) implements Waveform {
        @Override
        public long burstNanos(int frames) {
            return frames * SECOND / 10;
        }

        @Override
        public long preambleNanos() {
            return 0;
        }

        @Override
        public double detectionProbability(Reception reception, long startNanos) {
            return 1;
        }

        @Override
        public double evidence(Reception reception, long startNanos, int frame, int frames) {
            double snrDb = meanSnrDb(reception, startNanos + frame * SECOND / 10, frames);
            return Math.max(0, Math.min(1, snrDb - needDb + 0.5));
        }

        @Override
        public double combined(double earlier, double fresh) {
            return Math.max(earlier, fresh);
        }

        @Override
        public double decodingProbability(double evidence) {
            return evidence;
        }

        @Override
        public double meanSnrDb(Reception reception, long startNanos, int frames) {
            return Decibels.ofRatio(new SinrMeter().mean(reception, startNanos, 0, 1));
        }
    }
}
