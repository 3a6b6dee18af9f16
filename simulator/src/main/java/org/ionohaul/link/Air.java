package org.ionohaul.link;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.ionohaul.channel.End;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.Waveform;

/**
 * What becomes of a burst on its way: found or not, which frames are decoded, what SNR is measured. The only place where
 * the link meets the sky and where chance decides about a burst.
 */
final class Air {
    private final LinkParts parts;
    private final UniformRandomProvider detection;
    private final UniformRandomProvider decoding;
    private final ContinuousSampler gaussian;
    private final boolean isCombining;

    Air(LinkParts parts) {
        this.parts = parts;
        detection = parts.chances().detection();
        decoding = parts.chances().decoding();
        gaussian = ZigguratSampler.NormalizedGaussian.of(parts.chances().snrEstimate());
        isCombining = parts.arq().combining() != Combining.NONE;
    }

    /** Draws whether the receiver finds the burst whose first symbol arrives at the instant. */
    boolean isFound(End receiver, Burst burst, long arrivalNanos) {
        double probability = waveform(burst).detectionProbability(parts.reception(receiver), arrivalNanos);
        return detection.nextDouble() < probability;
    }

    /** Draws which frames of a burst that was found are decoded and marks them in it. */
    void decode(End receiver, Burst burst, long arrivalNanos, CombiningStore store) {
        Waveform waveform = waveform(burst);
        boolean combines = isCombining && burst.message() == Message.OVER;
        if (combines) {
            store.turnTo(burst.number(), burst.dataRate());
        }
        for (int frame = 0; frame < burst.frames(); frame++) {
            double fresh = waveform.evidence(parts.reception(receiver), arrivalNanos, frame, burst.frames());
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
    double measuredSnrDb(End receiver, Burst burst, long arrivalNanos) {
        double mean = waveform(burst).meanSnrDb(parts.reception(receiver), arrivalNanos, burst.frames());
        return mean + parts.ratePolicy().estimateDeviationDb() * gaussian.sample();
    }

    boolean isOccupied(End end, long atNanos) {
        return parts.watch().isOccupied(end, atNanos);
    }

    private Waveform waveform(Burst burst) {
        return parts.signals().of(burst.message(), burst.dataRate());
    }
}
