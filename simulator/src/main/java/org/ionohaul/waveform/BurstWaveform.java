package org.ionohaul.waveform;

import org.apache.commons.numbers.gamma.Erfc;
import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.SinrMeter;

/**
 * A burst of preamble, frames and interleaver fill, received through a fading band: asks the reception at enough
 * instants, rates what it hears, leaves the verdict to a {@link FrameModel}.
 */
final class BurstWaveform implements Waveform {
    private static final double NANOS_PER_SECOND = 1e9;

    /**
     * Standard deviation in dB of the normal distribution whose integral is the detection curve. The linking
     * probabilities that MIL-STD-188-141 demands in white noise (25, 50, 85, 95 % at -2.5, -1.5, -0.5, 0.0 dB; from
     * memory) fit 0.9 to 1.5 dB.
     */
    static final double DETECTION_DEVIATION_DB = 1.0;

    /** Noise bursts and interference may change faster than the fading: never sample more thinly than this. */
    private static final double LONGEST_STEP_NANOS = 0.1 * NANOS_PER_SECOND;

    private static final int FEWEST_SAMPLES = 2;
    private static final int MOST_SAMPLES = 40;
    private static final double ROUNDING = 1e-9;

    private final BurstShape shape;
    private final Hearing hearing;
    private final Mistuning mistuning;
    private final Listening listening;
    private final FrameModel frameModel;
    private final long preambleNanos;
    private final double frameNanos;
    private final double blockNanos;
    private final BlindMetric metric;
    private final SinrMeter meter = new SinrMeter();

    BurstWaveform(BurstShape shape, Hearing hearing, Listening listening, FrameModel frameModel) {
        FrameShape frame = shape.frame();
        this.shape = shape;
        this.hearing = hearing;
        this.mistuning = new Mistuning(hearing.energyPerSinr(), hearing.distortion());
        this.listening = listening;
        this.frameModel = frameModel;
        this.metric = new BlindMetric(hearing.separation());
        this.preambleNanos = Math.round(shape.preambleSeconds() * NANOS_PER_SECOND);
        this.frameNanos = frame.airtimeSeconds() * NANOS_PER_SECOND;
        this.blockNanos = frame.interleaverSeconds() > 0 ? frame.interleaverSeconds() * NANOS_PER_SECOND : frameNanos;
    }

    @Override
    public int payloadBytes() {
        return shape.frame().payloadBytes();
    }

    @Override
    public long burstNanos(int frames) {
        if (frames < 1) {
            throw new IllegalArgumentException("frames must be at least 1: " + frames);
        }
        return Math.addExact(preambleNanos, Math.round(blocksUntil(frames) * blockNanos));
    }

    @Override
    public long preambleNanos() {
        return preambleNanos;
    }

    @Override
    public double detectionProbability(Reception reception, long startNanos) {
        double spanNanos = (double) preambleNanos;
        listening.hear(reception, startNanos, spanNanos, samples(step(reception), spanNanos));
        double spanSeconds = spanNanos / NANOS_PER_SECOND;
        double coherent = Coherence.power(Math.PI * reception.dopplerSpreadHz() * spanSeconds)
                * Mistuning.coherentPower(mistuning.excessHz(reception, startNanos), spanSeconds);
        double snrDb = Decibels.ofRatio(listening.correlated() * hearing.meanPower() * coherent);
        double deviations = (snrDb - shape.detectionSnrDb()) / DETECTION_DEVIATION_DB;
        return Erfc.value(-deviations / Math.sqrt(2)) / 2;
    }

    @Override
    public double evidence(Reception reception, long startNanos, int frame, int frames) {
        if (frame < 0 || frame >= frames) {
            throw new IllegalArgumentException("frame must be from 0 to below " + frames + ": " + frame);
        }
        Hearing.OnPath onPath = hearing.on(
                hearing.distortion().late(reception), hearing.distortion().motion(reception));
        double firstNanos = frame * frameNanos;
        double lastNanos = firstNanos + frameNanos;
        int blocks = blocksUntil(frame + 1);
        double rating = 0;
        Reception heard = mistuning.heard(reception, startNanos, startNanos + burstNanos(frames));
        for (int block = (int) Math.floor(firstNanos / blockNanos + ROUNDING); block < blocks; block++) {
            double from = block * blockNanos;
            double overlap = Math.min(lastNanos, from + blockNanos) - Math.max(firstNanos, from);
            rating += overlap / frameNanos * meanRating(heard, startNanos + preambleNanos + (long) from, onPath);
        }
        return frameModel.evidence(rating);
    }

    @Override
    public double combined(double earlier, double fresh) {
        return frameModel.combined(earlier, fresh);
    }

    @Override
    public double decodingProbability(double evidence) {
        return frameModel.decodingProbability(evidence);
    }

    @Override
    public double unnoticedErrorProbability(double evidence) {
        return frameModel.unnoticedErrorProbability(evidence);
    }

    @Override
    public double meanSnrDb(Reception reception, long startNanos, int frames) {
        return meanSnrDb(reception, startNanos, (double) burstNanos(frames));
    }

    /** Returns how many interleaver blocks (or frames, without one) the first so many frames reach into. */
    private int blocksUntil(int frames) {
        return (int) Math.ceil(frames * frameNanos / blockNanos - ROUNDING);
    }

    private double meanRating(Reception reception, long fromNanos, Hearing.OnPath onPath) {
        listening.hear(reception, fromNanos, blockNanos, samples(step(reception), blockNanos));
        double sum = 0;
        metric.begin();
        for (int i = 0; i < listening.instants(); i++) {
            HeardInstant heard = listening.at(i);
            if (frameModel.decidesOneByOne()) {
                sum += ratingOneByOne(heard, onPath);
            } else {
                sum += ratingTogether(heard, onPath);
            }
        }
        return sum / (listening.instants() * listening.subBands());
    }

    private double ratingOneByOne(HeardInstant heard, Hearing.OnPath onPath) {
        double sum = listening.subBands() * heard.blanked() * frameModel.rating(0);
        for (int level = 0; level < heard.levels(); level++) {
            double left = heard.amplitude(level) * heard.amplitude(level);
            for (int band = 0; band < listening.subBands() && heard.share(level) > 0; band++) {
                double signal = heard.signal(band);
                double noise = onPath.noise(signal, heard.unfaded(), heard.noise(level, band) / left);
                sum += heard.share(level) * frameModel.rating(onPath.esN0(signal, noise));
            }
        }
        return sum;
    }

    private double ratingTogether(HeardInstant heard, Hearing.OnPath onPath) {
        double sum = 0;
        boolean isStruck = heard.isStruck();
        for (int band = 0; band < listening.subBands(); band++) {
            double signal = heard.signal(band);
            double perNoise = 1 / onPath.noise(signal, heard.unfaded(), listening.quietNoise(band));
            double esN0 = onPath.energy() * signal * perNoise;
            if (isStruck) {
                metric.erase(heard.blanked());
                double quiet = heard.noise(0, band);
                for (int level = 0; level < heard.levels(); level++) {
                    double added = heard.noise(level, band) - quiet;
                    metric.add(heard.share(level), heard.amplitude(level), 1 + added * perNoise);
                }
                esN0 = metric.evenEsN0(esN0);
            }
            sum += frameModel.rating(esN0);
        }
        return sum;
    }

    private double meanSnrDb(Reception reception, long fromNanos, double spanNanos) {
        double mean = meter.mean(reception, fromNanos, spanNanos, samples(step(reception), spanNanos));
        return Decibels.ofRatio(mean * hearing.meanPower());
    }

    private static double step(Reception reception) {
        return Math.min((double) reception.steadyNanos(), LONGEST_STEP_NANOS);
    }

    private static int samples(double step, double spanNanos) {
        return (int) Math.min(MOST_SAMPLES, Math.max(FEWEST_SAMPLES, Math.ceil(spanNanos / step)));
    }
}
