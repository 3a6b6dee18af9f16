package org.ionohaul.trial;

import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import org.ionohaul.channel.Reception;
import org.ionohaul.waveform.Waveform;

/**
 * How often a lone frame is lost on a path, averaged over its fading: the bench of two fading simulators on which data
 * sheets are measured. White noise, no slow variation; a frame is lost when its burst is not found or it is not decoded.
 *
 * <p>The same instants of the same skies serve every SNR, so the curve falls smoothly; it is worked out where it is asked
 * for, every half decibel, and kept. Belongs to one thread, as its waveform does.
 */
public final class LossOnPath {
    private static final long PAUSE_NANOS = 2_000_000_000;
    private static final double STEP_DB = 0.5;
    private static final int LOWEST_STEP = -120;
    private static final int HIGHEST_STEP = 160;

    private final Waveform waveform;
    private final FadingSkies skies;
    private final long spacingNanos;
    private final NavigableMap<Integer, Double> losses = new TreeMap<>();

    /**
     * Prepares the bench.
     *
     * @param waveform what is sent, one frame a burst
     * @param skies the path it goes through, heard in the passband of the waveform's emission
     */
    public LossOnPath(Waveform waveform, FadingSkies skies) {
        this.waveform = waveform;
        this.skies = skies;
        this.spacingNanos = Math.addExact(waveform.burstNanos(1), PAUSE_NANOS);
    }

    /**
     * Returns the share of frames lost.
     *
     * @param snrDb mean SNR in 3 kHz in dB, of a constant-envelope signal of the sender's full peak power
     */
    public double loss(double snrDb) {
        int step = (int) Math.floor(snrDb / STEP_DB);
        double share = snrDb / STEP_DB - step;
        return (1 - share) * atStep(step) + share * atStep(step + 1);
    }

    /**
     * Returns the mean SNR in 3 kHz, in dB, at which a share of the frames is lost, on the scale of {@link
     * #loss(double)}; positive infinity if more are lost even at 80 dB.
     *
     * @param loss the share, above 0 and below 1
     */
    public double needDb(double loss) {
        if (!(loss > 0 && loss < 1)) {
            throw new IllegalArgumentException("loss must be above 0 and below 1: " + loss);
        }
        int tooLow = LOWEST_STEP;
        int enough = HIGHEST_STEP;
        if (atStep(enough) > loss) {
            return Double.POSITIVE_INFINITY;
        }
        while (enough - tooLow > 1) {
            int middle = Math.floorDiv(tooLow + enough, 2);
            if (atStep(middle) > loss) {
                tooLow = middle;
            } else {
                enough = middle;
            }
        }
        double above = logOdds(atStep(tooLow));
        double below = logOdds(atStep(enough));
        return STEP_DB * (tooLow + (above - logOdds(loss)) / (above - below));
    }

    /**
     * Returns the share of frames that are delivered wrong because no check noticed, of all delivered.
     *
     * @param snrDb as for {@link #loss(double)}
     */
    public double unnoticedErrors(double snrDb) {
        double signal = Math.pow(10, snrDb / 10);
        return averaged(signal, waveform::unnoticedErrorProbability) / averaged(signal, waveform::decodingProbability);
    }

    private static double logOdds(double share) {
        double bounded = Math.min(1 - 1e-12, Math.max(1e-12, share));
        return Math.log(bounded / (1 - bounded));
    }

    private double atStep(int step) {
        return losses.computeIfAbsent(
                step, it -> 1 - averaged(Math.pow(10, it * STEP_DB / 10), waveform::decodingProbability));
    }

    private double averaged(double signal, DoubleUnaryOperator probability) {
        double sum = 0;
        for (Reception sky : skies.receptions()) {
            Reception raised = new Raised(sky, signal);
            for (int burst = 0; burst < skies.burstsEach(); burst++) {
                long start = burst * spacingNanos;
                sum += waveform.detectionProbability(raised, start)
                        * probability.applyAsDouble(waveform.evidence(raised, start, 0, 1));
            }
        }
        return sum / skies.bursts();
    }
}
