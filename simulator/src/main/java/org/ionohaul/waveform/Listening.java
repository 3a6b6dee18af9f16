package org.ionohaul.waveform;

import java.util.Arrays;
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
    private final FrontEnd frontEnd;
    private final double bandwidthHz;
    private final double symbolSeconds;
    private final boolean hasCarriers;
    private HeardInstant[] heard = {};
    private double[] meanNoise = {};
    private int instants;

    private Listening(FrontEnd frontEnd, double bandwidthHz, double symbolSeconds, boolean hasCarriers) {
        this.frontEnd = frontEnd;
        this.bandwidthHz = bandwidthHz;
        this.symbolSeconds = symbolSeconds;
        this.hasCarriers = hasCarriers;
    }

    /** Returns the receiver of a burst. Of a frame whose loss was measured carriers and symbols are not known. */
    static Listening of(BurstShape shape, Emission emission) {
        if (shape.frame() instanceof ModelledFrame modelled) {
            Coding coding = modelled.coding();
            return new Listening(
                    shape.frontEnd(), emission.bandwidthHz(), coding.symbolSeconds(), coding.carriers() > 1);
        }
        return new Listening(shape.frontEnd(), emission.bandwidthHz(), 0, false);
    }

    /** Listens to a stretch of time at so many instants, each in the middle of its share; to bursts all the time. */
    void hear(Reception reception, long fromNanos, double spanNanos, int count) {
        prepare(reception.subBands(), count);
        Arrays.fill(meanNoise, 0);
        for (int i = 0; i < instants; i++) {
            long from = fromNanos + (long) ((double) i / instants * spanNanos);
            long at = fromNanos + (long) ((i + 0.5) / instants * spanNanos);
            long to = fromNanos + (long) ((i + 1.0) / instants * spanNanos);
            heard[i].hear(reception, from, at, Math.max(from + 1, to));
            for (int band = 0; band < meanNoise.length; band++) {
                meanNoise[band] += heard[i].noise(band) / instants;
            }
        }
    }

    private void prepare(int subBands, int count) {
        if (meanNoise.length != subBands) {
            meanNoise = new double[subBands];
            heard = new HeardInstant[0];
        }
        if (heard.length < count) {
            Leakage leakage = new Leakage(subBands, bandwidthHz / subBands, symbolSeconds);
            HeardInstant[] more = Arrays.copyOf(heard, count);
            for (int i = heard.length; i < count; i++) {
                more[i] = new HeardInstant(frontEnd, hasCarriers, leakage, subBands);
            }
            heard = more;
        }
        instants = count;
    }

    int instants() {
        return instants;
    }

    int subBands() {
        return meanNoise.length;
    }

    HeardInstant at(int instant) {
        return heard[instant];
    }

    /** Returns the noise of a sub-band as a receiver takes it that knows no better than its mean over the stretch. */
    double meanNoise(int band) {
        return meanNoise[band];
    }

    /**
     * Returns the SINR that a correlator over the whole stretch has to work with, linear: the mean over the band of signal
     * over noise, each in the mean over time. Without excision noise is even over the band.
     */
    double correlated() {
        double sum = 0;
        for (int band = 0; band < meanNoise.length; band++) {
            double signal = 0;
            for (int i = 0; i < instants; i++) {
                signal += heard[i].signal(band);
            }
            sum += signal / instants / meanNoise[band];
        }
        return sum / meanNoise.length;
    }
}
