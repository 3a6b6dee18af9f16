package org.ionohaul.link;

import java.util.List;
import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.SinrMeter;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.SteadyReception;
import org.ionohaul.waveform.Waveform;

/** A link of plain parts: data rates that need 0, 5, 10, 15 dB and carry 10, 20, 40, 80 bytes, 0.1 s a frame. */
final class PlainLink {
    private static final long SECOND = 1_000_000_000L;

    private PlainLink() {}

    static LinkParts parts(RatePolicyRules rules, Oracle oracle) {
        return parts(rules, oracle, new StationTimes(0, 0, 0, 0), 0);
    }

    static LinkParts parts(RatePolicyRules rules, Oracle oracle, StationTimes times, long propagationNanos) {
        Waveform single = new Threshold(0, -20);
        Signals signals = new Signals(
                List.of(new Threshold(10, 0), new Threshold(20, 5), new Threshold(40, 10), new Threshold(80, 15)),
                single,
                single,
                single);
        TrialStreams streams = new TrialStreams(3, 0);
        return new LinkParts(
                signals,
                new SteadyReception(0),
                new SteadyReception(0),
                ChannelWatch.ALWAYS_CLEAR,
                times,
                times,
                propagationNanos,
                new ArqRules(
                        ArqScheme.SELECTIVE_REPEAT,
                        8,
                        8,
                        8,
                        SECOND * 100,
                        Combining.NONE,
                        0,
                        ArqRules.AnswerToSilence.REPEAT,
                        5,
                        false,
                        0),
                rules,
                LossCurves.of(signals),
                oracle,
                new Chances(
                        streams.open(Purpose.DETECTION, 0),
                        streams.open(Purpose.DECODING, 0),
                        streams.open(Purpose.SNR_ESTIMATE, 0),
                        streams.open(Purpose.DIALLING, 0),
                        streams.open(Purpose.POLICY, 0)));
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
            return Math.max(0, Math.min(1, meanSnrDb(reception, startNanos, frames) - needDb + 0.5));
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
