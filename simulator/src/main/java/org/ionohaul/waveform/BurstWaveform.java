package org.ionohaul.waveform;

import org.apache.commons.numbers.gamma.Erfc;
import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.SinrMeter;
import org.jspecify.annotations.Nullable;

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

    /**
     * How far apart looks may be, in steady times: at a third of the reciprocal of the Doppler spread. Power fades with a Gaussian
     * spectrum, of which equal steps miss nothing once they are a few times shorter than its reciprocal; what is left is what
     * happens at the ends of a stretch, so that short ones need looks more. With both, what data rates need differs by 0.04 dB rms from
     * what it is with looks ten times as dense ({@code LooksTest}).
     */
    private static final double STEADY_TIMES = 8.0 / 3;

    private static final int LOOKS_MORE = 2;

    /** Interference may change faster than the fading: never look more rarely than this. */
    private static final double LONGEST_STEP_NANOS = 0.3 * NANOS_PER_SECOND;

    private static final int MOST_LOOKS = 40;
    private static final double ROUNDING = 1e-9;

    /** What is left of so little is nothing; above it, logarithms of one and a little more are right. */
    private static final double FAINTEST = 1e-12;

    private final WaveformPlan plan;
    private final BurstShape shape;
    private final Hearing hearing;
    private final Mistuning mistuning;
    private final Listening listening;
    private final FrameModel frameModel;
    private final long preambleNanos;
    private final double frameNanos;
    private final double blockNanos;
    private final RatioTable ratings;
    private final BlindMetric metric;
    private final Equalisation equalisation;
    private final BandRating bandRating;
    private final SinrMeter meter = new SinrMeter();

    private final RatedBlock rated = new RatedBlock();
    private final LastPath path = new LastPath();

    BurstWaveform(WaveformPlan plan) {
        this.plan = plan;
        this.shape = plan.shape();
        this.hearing = plan.hearing();
        this.mistuning = new Mistuning(hearing.energyPerSinr(), hearing.distortion());
        this.listening = new Listening(plan);
        this.frameModel = plan.frameModel();
        this.ratings = frameModel.ratings();
        this.metric = new BlindMetric(hearing.separation(), ratings);
        this.equalisation = new Equalisation(hearing.equaliser());
        this.bandRating =
                new BandRating(ratings, equalisation, hearing.equaliser().leavesOneRatio());
        FrameShape frame = shape.frame();
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
        listening.hear(reception, startNanos, spanNanos, looks(reception, spanNanos));
        double spanSeconds = spanNanos / NANOS_PER_SECOND;
        path.of(reception);
        double coherent =
                path.coherent * Mistuning.coherentPower(mistuning.excessHz(reception, startNanos), spanSeconds);
        double snrDb = Decibels.ofRatio(listening.correlated() * hearing.meanPower() * coherent);
        double deviations = (snrDb - shape.detectionSnrDb()) / DETECTION_DEVIATION_DB;
        return Erfc.value(-deviations / Math.sqrt(2)) / 2;
    }

    @Override
    public double evidence(Reception reception, long startNanos, int frame, int frames) {
        return frameModel.evidence(
                rating(reception, startNanos, frame, frames, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
    }

    @Override
    public Fate fate(Reception reception, long startNanos, int frame, int frames, double draw) {
        // A block that frames share is worked out for all of them.
        boolean isAlone = shape.frame().interleaverSeconds() == 0;
        double tooLittle = isAlone && !plan.keepsLost() ? plan.bars().tooLittle(draw) : Double.NEGATIVE_INFINITY;
        double enough = isAlone ? plan.bars().enough(draw) : Double.POSITIVE_INFINITY;
        double rating = rating(reception, startNanos, frame, frames, tooLittle, enough);
        if (rating >= enough) {
            return Fate.RIGHT;
        }
        return rating <= tooLittle ? Fate.LOST : fate(frameModel.evidence(rating), draw);
    }

    /** Returns the mean rating of a frame's symbols; where it lies on or beyond a bar, a number that does so, too. */
    private double rating(
            Reception reception, long startNanos, int frame, int frames, double tooLittle, double enough) {
        if (frame < 0 || frame >= frames) {
            throw new IllegalArgumentException("frame must be from 0 to below " + frames + ": " + frame);
        }
        Hearing.OnPath onPath = path.of(reception);
        double firstNanos = frame * frameNanos;
        double lastNanos = firstNanos + frameNanos;
        int blocks = blocksUntil(frame + 1);
        double rating = 0;
        Reception heard = mistuning.heard(reception, startNanos, startNanos + burstNanos(frames));
        for (int block = (int) Math.floor(firstNanos / blockNanos + ROUNDING); block < blocks; block++) {
            double from = block * blockNanos;
            double overlap = Math.min(lastNanos, from + blockNanos) - Math.max(firstNanos, from);
            if (!rated.is(reception, startNanos, frames, block)) {
                long fromNanos = startNanos + preambleNanos + (long) from;
                double fresh = meanRating(heard, fromNanos, onPath, tooLittle, enough);
                if (fresh <= tooLittle || fresh >= enough) {
                    return fresh;
                }
                rated.keep(reception, startNanos, frames, block, fresh);
            }
            rating += overlap / frameNanos * rated.rating;
        }
        return rating;
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

    /** The path that was heard last, and what its delays and spread cost: the same at all times. */
    private final class LastPath {
        private @Nullable Reception reception;
        private Hearing.@Nullable OnPath onPath;
        private double coherent;

        /** Returns what a reception's path costs frames, and notes what is left of a preamble. */
        Hearing.OnPath of(Reception heard) {
            Hearing.OnPath known = onPath;
            if (known == null || reception != heard) {
                Distortion distortion = hearing.distortion();
                known = hearing.on(distortion.late(heard), distortion.motion(heard));
                reception = heard;
                onPath = known;
                coherent = Coherence.power(Math.PI * heard.dopplerSpreadHz() * (preambleNanos / NANOS_PER_SECOND));
            }
            return known;
        }
    }

    /** The interleaver block (or frame, without one) that was rated last: all frames spread over it share its rating. */
    private static final class RatedBlock {
        private @Nullable Reception reception;
        private long startNanos;
        private int frames;
        private int number;
        private double rating;

        /** Returns whether it is that block of a burst of so many frames, heard by the same; a reception is a pure function. */
        boolean is(Reception heard, long burstNanos, int ofFrames, int block) {
            return startNanos == burstNanos && frames == ofFrames && number == block && reception == heard;
        }

        void keep(Reception heard, long burstNanos, int ofFrames, int block, double itsRating) {
            reception = heard;
            startNanos = burstNanos;
            frames = ofFrames;
            number = block;
            rating = itsRating;
        }
    }

    private double meanRating(
            Reception reception, long fromNanos, Hearing.OnPath onPath, double tooLittle, double enough) {
        listening.hear(reception, fromNanos, blockNanos, looks(reception, blockNanos));
        int looks = listening.instants() * listening.subBands();
        double sum = 0;
        if (frameModel.decidesOneByOne()) {
            for (int i = 0; i < listening.instants(); i++) {
                sum += ratingOneByOne(listening.at(i), onPath);
            }
        } else if (listening.isStruck()) {
            sum = hearing.fillsBand()
                    ? ratingOfWholeBand(onPath)
                    : ratingOfParts(onPath, looks * tooLittle, looks * enough);
        } else {
            sum = ratingBetweenBursts(onPath, looks * tooLittle, looks * enough);
        }
        return sum / looks;
    }

    private double ratingOneByOne(HeardInstant heard, Hearing.OnPath onPath) {
        double sum = listening.subBands() * heard.blanked() * ratings.at(0);
        for (int level = 0; level < heard.levels(); level++) {
            if (heard.share(level) > 0) {
                double left = heard.amplitude(level) * heard.amplitude(level);
                bandRating.begin();
                for (int band = 0; band < listening.subBands(); band++) {
                    double signal = heard.signal(band);
                    double noise = onPath.noise(signal, heard.unfaded(), heard.noise(level, band) / left);
                    bandRating.add(onPath.esN0(signal, noise));
                }
                sum += heard.share(level) * bandRating.sum();
            }
        }
        return sum;
    }

    /** Looks only as far as it takes to know on which side of two bars the sum lies. */
    private double ratingBetweenBursts(Hearing.OnPath onPath, double tooLittle, double enough) {
        double sum = 0;
        double mostToCome = ratings.highest() * listening.instants() * listening.subBands();
        for (int i = 0; i < listening.instants(); i++) {
            bandRating.begin();
            for (int band = 0; band < listening.subBands(); band++) {
                bandRating.add(esN0(listening.at(i), 0, band, onPath));
            }
            sum += bandRating.sum();
            mostToCome -= ratings.highest() * listening.subBands();
            if (sum >= enough) {
                return sum;
            }
            if (sum + mostToCome <= tooLittle) {
                return sum + mostToCome;
            }
        }
        return sum;
    }

    /** Each symbol meets one sub-band: every sub-band of every instant is a place. */
    private double ratingOfParts(Hearing.OnPath onPath, double tooLittle, double enough) {
        metric.begin();
        for (int i = 0; i < listening.instants(); i++) {
            HeardInstant heard = listening.at(i);
            for (int band = 0; band < listening.subBands(); band++) {
                double signal = heard.signal(band);
                double perNoise = 1 / onPath.noise(signal, heard.unfaded(), listening.quietNoise(band));
                metric.place(onPath.energy() * signal * perNoise, heard.blanked());
                for (int level = 0; level < heard.levels(); level++) {
                    double added = heard.noise(level, band) - heard.noise(0, band);
                    metric.add(heard.share(level), heard.amplitude(level), 1 + added * perNoise);
                }
            }
        }
        metric.weigh(tooLittle, enough);
        return metric.information();
    }

    /**
     * Each symbol meets the whole band, and its equaliser leaves it one ratio: every instant is a place, and bursts cost all
     * its sub-bands the same.
     */
    private double ratingOfWholeBand(Hearing.OnPath onPath) {
        metric.begin();
        for (int i = 0; i < listening.instants(); i++) {
            HeardInstant heard = listening.at(i);
            double esN0 = equalised(heard, 0, onPath);
            metric.place(esN0, heard.blanked());
            for (int level = 0; level < heard.levels(); level++) {
                if (heard.share(level) > 0) {
                    double struck = Math.max(equalised(heard, level, onPath), FAINTEST);
                    metric.add(heard.share(level), heard.amplitude(level), level > 0 ? esN0 / struck : 1);
                }
            }
        }
        metric.weigh();
        return hearing.equaliser().leavesOneRatio()
                ? listening.subBands() * metric.information()
                : ratingOfUnevenParts(onPath);
    }

    /** Every part of the band keeps its own ratio but for what bursts took of all. */
    private double ratingOfUnevenParts(Hearing.OnPath onPath) {
        double sum = 0;
        for (int i = 0; i < listening.instants(); i++) {
            double left = metric.part(i);
            for (int band = 0; band < listening.subBands(); band++) {
                sum += ratings.at(left * esN0(listening.at(i), 0, band, onPath));
            }
        }
        return sum;
    }

    /** Returns the Es/N0 that the equaliser makes of a whole band on a level of noise. */
    private double equalised(HeardInstant heard, int level, Hearing.OnPath onPath) {
        equalisation.begin();
        for (int band = 0; band < listening.subBands(); band++) {
            equalisation.add(esN0(heard, level, band, onPath));
        }
        return equalisation.esN0();
    }

    /** Returns the Es/N0 in a sub-band on a level of noise, as if all the signal's amplitude were left. */
    private double esN0(HeardInstant heard, int level, int band, Hearing.OnPath onPath) {
        double signal = heard.signal(band);
        double quiet = onPath.noise(signal, heard.unfaded(), listening.quietNoise(band));
        return onPath.esN0(signal, quiet + heard.noise(level, band) - heard.noise(0, band));
    }

    private double meanSnrDb(Reception reception, long fromNanos, double spanNanos) {
        double mean = meter.mean(reception, fromNanos, spanNanos, looks(reception, spanNanos));
        return Decibels.ofRatio(mean * hearing.meanPower());
    }

    private static int looks(Reception reception, double spanNanos) {
        double stepNanos = Math.min(STEADY_TIMES * reception.steadyNanos(), LONGEST_STEP_NANOS);
        return (int) Math.min(MOST_LOOKS, Math.ceil(spanNanos / stepNanos) + LOOKS_MORE);
    }
}
