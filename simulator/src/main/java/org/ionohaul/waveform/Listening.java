package org.ionohaul.waveform;

import java.util.Arrays;
import org.ionohaul.channel.NoiseBursts;
import org.ionohaul.channel.Reception;

/**
 * What a receiver's front end leaves of a stretch of reception, for the detector and the decoder alike. Keeps what it heard
 * last and so belongs to one thread.
 *
 * <p>A receiver that doesn't know where in band and time the noise is stronger takes it as even and decides for what is
 * nearest. It fares as if the noise were Gaussian of the same mean power, whatever it really is (Lapidoth, "Nearest neighbor
 * decoding for additive non-Gaussian noise channels", IEEE Trans. Inf. Theory 42(5), 1996). One that knows the noise of each
 * part of the band whitens it, and each part counts by its own ratio (one carrier with decision feedback: Cioffi, Dudevoir,
 * Eyuboglu and Forney, "MMSE decision-feedback equalizers and coding", IEEE Trans. Commun. 43(10), 1995; a correlator: Van
 * Trees, Detection, Estimation, and Modulation Theory).
 */
final class Listening {
    private final WaveformPlan plan;
    private final NoiseBursts bursts = new NoiseBursts();
    private HeardInstant[] heard = {};
    private double[] quietNoise = {};
    private int instants;

    /** Prepares the receiver of a burst. */
    Listening(WaveformPlan plan) {
        this.plan = plan;
    }

    /** Listens to a stretch of time at so many instants, each in the middle of its share; to bursts all the time. */
    void hear(Reception reception, long fromNanos, double spanNanos, int count) {
        prepare(reception.subBands(), count);
        double stepNanos = spanNanos / instants;
        double weight = 1.0 / instants;
        Arrays.fill(quietNoise, 0);
        reception.bursts(fromNanos, fromNanos + Math.max(1, (long) spanNanos), bursts);
        for (int i = 0; i < instants; i++) {
            heard[i].hear(reception, fromNanos + (long) ((i + 0.5) * stepNanos), bursts);
            for (int band = 0; band < quietNoise.length; band++) {
                quietNoise[band] += heard[i].noise(0, band) * weight;
            }
        }
    }

    private void prepare(int subBands, int count) {
        if (quietNoise.length != subBands) {
            quietNoise = new double[subBands];
            heard = new HeardInstant[0];
        }
        if (heard.length < count) {
            Leakage leakage = plan.leakage(subBands);
            HeardInstant[] more = Arrays.copyOf(heard, count);
            for (int i = heard.length; i < count; i++) {
                more[i] = new HeardInstant(plan, leakage, subBands);
            }
            heard = more;
        }
        instants = count;
    }

    int instants() {
        return instants;
    }

    /** Returns whether bursts strike any symbols. */
    boolean isStruck() {
        for (int i = 0; i < instants; i++) {
            if (heard[i].isStruck()) {
                return true;
            }
        }
        return false;
    }

    int subBands() {
        return quietNoise.length;
    }

    HeardInstant at(int instant) {
        return heard[instant];
    }

    /** Returns the mean noise of a sub-band between bursts. */
    double quietNoise(int band) {
        return quietNoise[band];
    }

    /**
     * Returns the SINR that a correlator over the whole stretch has to work with, linear: the mean over the band of signal
     * over noise, each in the mean over time. Without excision noise is even over the band.
     */
    double correlated() {
        double sum = 0;
        for (int band = 0; band < quietNoise.length; band++) {
            double signal = 0;
            double noise = 0;
            for (int i = 0; i < instants; i++) {
                double left = heard[i].meanAmplitude();
                signal += left * left * heard[i].signal(band);
                noise += heard[i].meanNoise(band);
            }
            sum += signal / noise;
        }
        return sum / quietNoise.length;
    }
}
