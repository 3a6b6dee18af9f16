package org.ionohaul.anchor;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntToDoubleFunction;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.Passband;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.SkySamples;
import org.ionohaul.waveform.BurstShape;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.Emission;
import org.ionohaul.waveform.FrameCheck;
import org.ionohaul.waveform.ModelledFrame;
import org.ionohaul.waveform.Receiver;
import org.ionohaul.waveform.Waveform;
import org.ionohaul.waveform.Waveforms;

/**
 * Sends the same frames through the same skies twice: symbol by symbol through a reference link, and as the model has it.
 * Fading's luck is the same for both, so that they differ by what they make of it.
 *
 * @param link the link
 * @param condition what it is tried under
 * @param frames how many frames
 * @param seed of skies, noise and data
 */
record AnchorBench(ReferenceLink link, AirCondition condition, int frames, long seed) {
    private static final int FRAMES_A_SKY = 20;
    private static final long SPACING_NANOS = 20_000_000_000L;
    private static final double NO_CEILING_DB = 900;
    private static final double ALWAYS_FOUND_DB = -150;
    private static final int LOWEST_DB = -4;
    private static final int HIGHEST_DB = 44;
    private static final int CISOIDS = 24;

    /** Returns the share of frames that the reference receiver loses. */
    double referenceLoss(double snrDb, Tracking tracking) {
        return Arrays.stream(lost(snrDb, tracking)).average().orElseThrow();
    }

    /** Returns of each frame whether the reference receiver loses it: 1 or 0. */
    double[] lost(double snrDb, Tracking tracking) {
        double[] lost = new double[frames];
        SkySamples sky = sky(snrDb, 0);
        for (int frame = 0; frame < frames; frame++) {
            if (frame % FRAMES_A_SKY == 0) {
                sky = sky(snrDb, frame);
            }
            lost[frame] = isLost(frame, snrDb, sky, tracking) ? 1 : 0;
        }
        return lost;
    }

    /** Returns the probability of each frame's loss as the model has it. */
    double[] lossModelled(double snrDb, Receiver receiver) {
        Emission emission = new Emission(ReferenceLink.SAMPLE_RATE, 0);
        Waveform waveform = Waveforms.of(
                new BurstShape(0, ALWAYS_FOUND_DB, link.frontEnd(condition.isBlanked()), frame(receiver)),
                emission,
                Combining.NONE);
        double[] losses = new double[frames];
        Reception reception = heard(sky(snrDb, 0), emission);
        for (int frame = 0; frame < frames; frame++) {
            if (frame % FRAMES_A_SKY == 0) {
                reception = heard(sky(snrDb, frame), emission);
            }
            losses[frame] = 1 - waveform.decodingProbability(waveform.evidence(reception, startNanos(frame), 0, 1));
        }
        return losses;
    }

    /** Returns the model's receiver for this link. */
    Receiver receiver(Tracking tracking, double gapDb) {
        double trackingSeconds = tracking == Tracking.KNOWN ? 0 : link.trackingSeconds();
        return new Receiver(link.toleranceSeconds(), trackingSeconds, gapDb, NO_CEILING_DB);
    }

    /** Returns the SNR in 3 kHz at which the reference receiver loses so many, in dB. */
    double referenceNeedDb(double loss, Tracking tracking) {
        return needDb(loss, snrDb -> referenceLoss(snrDb, tracking));
    }

    /** Returns the SNR in 3 kHz at which the model loses so many, in dB. */
    double modelNeedDb(double loss, Receiver receiver) {
        return needDb(
                loss,
                snrDb -> Arrays.stream(lossModelled(snrDb, receiver)).average().orElseThrow());
    }

    /** Halves on whole decibels, then joins the log odds by a line; infinite if 43 dB are not enough. */
    private double needDb(double loss, IntToDoubleFunction lossAt) {
        Map<Integer, Double> losses = new TreeMap<>();
        int tooLow = LOWEST_DB;
        int enough = HIGHEST_DB;
        while (enough - tooLow > 1) {
            int middle = Math.floorDiv(tooLow + enough, 2);
            losses.put(middle, lossAt.applyAsDouble(middle));
            if (losses.get(middle) > loss) {
                tooLow = middle;
            } else {
                enough = middle;
            }
        }
        if (!losses.containsKey(tooLow) || !losses.containsKey(enough)) {
            return Double.POSITIVE_INFINITY;
        }
        double above = logOdds(losses.get(tooLow));
        double below = logOdds(losses.get(enough));
        return tooLow + (above - logOdds(loss)) / (above - below);
    }

    /** No loss at all among so many frames counts as half a frame. */
    private double logOdds(double loss) {
        double least = 0.5 / frames;
        double bounded = Math.min(1 - least, Math.max(least, loss));
        return Math.log(bounded / (1 - bounded));
    }

    private ModelledFrame frame(Receiver receiver) {
        return new ModelledFrame(
                link.coding(),
                receiver,
                link.informationBits() / 8,
                link.informationBits(),
                FrameCheck.WHOLE_FRAME,
                link.samples() / ReferenceLink.SAMPLE_RATE,
                0);
    }

    private Reception heard(SkySamples sky, Emission emission) {
        Passband passband = emission.passband();
        Reception reception = sky.reception(passband);
        return condition.heard(reception, new Passband(passband.widthHz(), reception.subBands()));
    }

    private SkySamples sky(double snrDb, int frame) {
        return new SkySamples(condition.sky(snrDb), seed, frame / FRAMES_A_SKY);
    }

    private static long startNanos(int frame) {
        return frame % FRAMES_A_SKY * SPACING_NANOS;
    }

    private boolean isLost(int frame, double snrDb, SkySamples sky, Tracking tracking) {
        UniformRandomProvider random = random(frame);
        int[] bits = random.ints(link.informationBits(), 0, 2).toArray();
        double[] ratios = received(ConvolutionalCode.encode(bits), frame, snrDb, sky, tracking, random);
        return !Arrays.equals(bits, ConvolutionalCode.decode(ratios));
    }

    /** Returns the share of a frame's code bits that are wrong before decoding. */
    double wrongBits(int frame, double snrDb, Tracking tracking) {
        UniformRandomProvider random = random(frame);
        int[] code = random.ints((long) link.dataSymbols() * link.mapping().bits(), 0, 2)
                .toArray();
        double[] ratios = received(code, frame, snrDb, sky(snrDb, frame), tracking, random);
        int wrong = 0;
        for (int bit = 0; bit < code.length; bit++) {
            wrong += ratios[bit] < 0 != (code[bit] == 1) ? 1 : 0;
        }
        return wrong / (double) code.length;
    }

    private double[] received(
            int[] code, int frame, double snrDb, SkySamples sky, Tracking tracking, UniformRandomProvider random) {
        BlockInterleaver interleaver = new BlockInterleaver(code.length);
        Signal sent = link.modulate(interleaver.spread(code));
        Heard heard = heard(sent, startNanos(frame), Decibels.toRatio(-snrDb), sky, random);
        return interleaver.gather(link.soften(heard, tracking));
    }

    private UniformRandomProvider random(int frame) {
        return RandomSource.SPLIT_MIX_64.create(seed + 7919L * frame);
    }

    /**
     * Lets a signal through the air.
     *
     * @param noise noise power in 3 kHz over the mean power of the signal
     */
    private Heard heard(Signal sent, long startNanos, double noise, SkySamples sky, UniformRandomProvider random) {
        int[] delays = condition.delays();
        Signal[] gains = new Signal[delays.length];
        Arrays.setAll(gains, path -> new Signal(sent.length()));
        Signal heard = new Signal(sent.length());
        double floor = noise * ReferenceLink.SAMPLE_RATE / Reception.NOISE_BANDWIDTH_HZ;
        double[] now = new double[2 * delays.length];
        ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
        for (int at = 0; at < sent.length(); at++) {
            long nanos = startNanos + Math.round(at * 1e9 / ReferenceLink.SAMPLE_RATE);
            sky.gains(nanos, now);
            for (int path = 0; path < delays.length; path++) {
                gains[path].set(at, now[2 * path], now[2 * path + 1]);
                int from = at - delays[path];
                if (from >= 0) {
                    heard.addProduct(at, now[2 * path], now[2 * path + 1], sent.real()[from], sent.imaginary()[from]);
                }
            }
            double deviation = Math.sqrt(floor * sky.noise(nanos) / 2);
            heard.add(at, deviation * normal.sample(), deviation * normal.sample());
        }
        double interferer = noise * condition.interferer();
        interfere(heard, interferer, random);
        return new Heard(heard, gains, floor + interferer, condition);
    }

    private static void interfere(Signal heard, double power, UniformRandomProvider random) {
        for (int i = 0; i < CISOIDS && power > 0; i++) {
            double hz = AirCondition.INTERFERER_LOW_HZ
                    + random.nextDouble() * (AirCondition.INTERFERER_HIGH_HZ - AirCondition.INTERFERER_LOW_HZ);
            double phase = 2 * Math.PI * random.nextDouble();
            double amplitude = Math.sqrt(power / CISOIDS);
            for (int at = 0; at < heard.length(); at++) {
                double turn = phase + 2 * Math.PI * hz * at / ReferenceLink.SAMPLE_RATE;
                heard.add(at, amplitude * Math.cos(turn), amplitude * Math.sin(turn));
            }
        }
    }
}
