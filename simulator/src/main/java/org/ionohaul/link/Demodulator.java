package org.ionohaul.link;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.ionohaul.channel.Reception;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.Fate;
import org.ionohaul.waveform.Waveform;

/**
 * What the receivers of a mode make of a burst: found or not, which frames are decoded, what SNR is measured. The only place
 * where chance decides about a burst; both stations of a link draw on the same streams.
 */
final class Demodulator {
    private final ModeSpec mode;
    private final UniformRandomProvider detection;
    private final UniformRandomProvider decoding;
    private final UniformRandomProvider replies;
    private final ContinuousSampler gaussian;
    private final boolean isCombining;

    Demodulator(ModeSpec mode, Chances chances) {
        this.mode = mode;
        detection = chances.detection();
        decoding = chances.decoding();
        replies = chances.replies();
        gaussian = ZigguratSampler.NormalizedGaussian.of(chances.snrEstimate());
        isCombining = mode.arq().combining() != Combining.NONE;
    }

    /** Draws whether the receiver finds the burst whose first symbol arrives at the instant. */
    boolean isFound(Reception reception, Burst burst, long arrivalNanos) {
        double probability = waveform(burst).detectionProbability(reception, arrivalNanos);
        return (isOneOfTwoWords(burst) ? replies : detection).nextDouble() < probability;
    }

    /**
     * Draws which frames of a burst that was found are decoded, and which of them wrong, and marks them in it.
     *
     * <p>One draw decides both: below the probability of a right frame it is right, above it but below that of a passed
     * check it is wrong. So a longer check changes nothing but the fate of what a shorter one overlooks; and as the draw is
     * kept with a frame that failed, each further copy, decoded with the others, has a chance of its own to pass wrongly.
     */
    void decode(Reception reception, Burst burst, long arrivalNanos, CombiningStore store) {
        Waveform waveform = waveform(burst);
        UniformRandomProvider draws = isOneOfTwoWords(burst) ? replies : decoding;
        boolean combines = isCombining && burst.message() == Message.OVER;
        if (combines) {
            store.turnTo(burst.number(), burst.dataRate());
        }
        for (int frame = 0; frame < burst.frames(); frame++) {
            int kept = combines ? store.find(burst.frameStart(frame)) : CombiningStore.NONE;
            Fate fate;
            if (kept == CombiningStore.NONE) {
                double draw = draws.nextDouble();
                fate = waveform.fate(reception, arrivalNanos, frame, burst.frames(), draw);
                if (combines && fate == Fate.LOST) {
                    double evidence = waveform.evidence(reception, arrivalNanos, frame, burst.frames());
                    store.keep(burst.frameStart(frame), evidence, draw);
                }
            } else {
                double fresh = waveform.evidence(reception, arrivalNanos, frame, burst.frames());
                double gathered = waveform.combined(store.evidence(kept), fresh);
                fate = waveform.fate(gathered, store.threshold(kept));
                if (fate == Fate.LOST) {
                    store.gather(kept, gathered);
                } else {
                    store.forget(kept);
                }
            }
            if (fate != Fate.LOST) {
                burst.decode(frame, fate == Fate.WRONG);
            }
        }
    }

    /** Draws the SNR in 3 kHz, in dB, that the receiver measures over a burst. */
    double measuredSnrDb(Reception reception, Burst burst, long arrivalNanos) {
        double mean = waveform(burst).meanSnrDb(reception, arrivalNanos, burst.frames());
        return mean + mode.ratePolicy().estimateDeviationDb() * gaussian.sample();
    }

    private boolean isOneOfTwoWords(Burst burst) {
        return burst.message() == Message.ACKNOWLEDGEMENT && mode.arq().scheme().answersEach();
    }

    private Waveform waveform(Burst burst) {
        return mode.signals().of(burst.message(), burst.dataRate());
    }
}
