package org.ionohaul.link;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.ionohaul.channel.Reception;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.Waveform;

/**
 * What the receivers of a mode make of a burst: found or not, which frames are decoded, what SNR is measured. The only place
 * where chance decides about a burst; both stations of a link draw on the same streams.
 */
final class Demodulator {
    private final ModeSpec mode;
    private final UniformRandomProvider detection;
    private final UniformRandomProvider decoding;
    private final ContinuousSampler gaussian;
    private final boolean isCombining;

    Demodulator(ModeSpec mode, Chances chances) {
        this.mode = mode;
        detection = chances.detection();
        decoding = chances.decoding();
        gaussian = ZigguratSampler.NormalizedGaussian.of(chances.snrEstimate());
        isCombining = mode.arq().combining() != Combining.NONE;
    }

    /** Draws whether the receiver finds the burst whose first symbol arrives at the instant. */
    boolean isFound(Reception reception, Burst burst, long arrivalNanos) {
        double probability = waveform(burst).detectionProbability(reception, arrivalNanos);
        return detection.nextDouble() < probability;
    }

    /** Draws which frames of a burst that was found are decoded and marks them in it. */
    void decode(Reception reception, Burst burst, long arrivalNanos, CombiningStore store) {
        Waveform waveform = waveform(burst);
        boolean combines = isCombining && burst.message() == Message.OVER;
        if (combines) {
            store.turnTo(burst.number(), burst.dataRate());
        }
        for (int frame = 0; frame < burst.frames(); frame++) {
            double fresh = waveform.evidence(reception, arrivalNanos, frame, burst.frames());
            boolean succeeds = combines
                    ? succeedsCombined(waveform, burst.frameStart(frame), fresh, store)
                    : decoding.nextDouble() < waveform.decodingProbability(fresh);
            if (succeeds) {
                burst.decode(frame);
            }
        }
    }

    private boolean succeedsCombined(Waveform waveform, long start, double fresh, CombiningStore store) {
        int kept = store.find(start);
        if (kept == CombiningStore.NONE) {
            return succeedsAtFirst(waveform, start, fresh, store);
        }
        double gathered = waveform.combined(store.evidence(kept), fresh);
        boolean succeeds = store.threshold(kept) < waveform.decodingProbability(gathered);
        if (succeeds) {
            store.forget(kept);
        } else {
            store.gather(kept, gathered);
        }
        return succeeds;
    }

    private boolean succeedsAtFirst(Waveform waveform, long start, double fresh, CombiningStore store) {
        double threshold = decoding.nextDouble();
        boolean succeeds = threshold < waveform.decodingProbability(fresh);
        if (!succeeds) {
            store.keep(start, fresh, threshold);
        }
        return succeeds;
    }

    /** Draws the SNR in 3 kHz, in dB, that the receiver measures over a burst. */
    double measuredSnrDb(Reception reception, Burst burst, long arrivalNanos) {
        double mean = waveform(burst).meanSnrDb(reception, arrivalNanos, burst.frames());
        return mean + mode.ratePolicy().estimateDeviationDb() * gaussian.sample();
    }

    private Waveform waveform(Burst burst) {
        return mode.signals().of(burst.message(), burst.dataRate());
    }
}
