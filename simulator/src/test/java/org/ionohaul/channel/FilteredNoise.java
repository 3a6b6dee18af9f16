package org.ionohaul.channel;

import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;

/**
 * A fading gain made another way: white Gaussian noise over frequency, multiplied by an amplitude response, and brought
 * to time by a fast Fourier transform. It shares neither filter nor generator with the program.
 */
final class FilteredNoise {
    private static final int POINTS = 1 << 21;

    private final double stepSeconds;
    private final double[][] gain;

    /**
     * Makes a sequence of {@value #POINTS} points and mean power 1.
     *
     * @param sigmaHz standard deviation of the Gaussian shape S(f)
     * @param exponent which power of S(f) serves as amplitude response: one half when S is to be the power spectrum
     */
    FilteredNoise(double sigmaHz, double exponent, double stepSeconds, long seed) {
        this.stepSeconds = stepSeconds;
        this.gain = new double[2][POINTS];
        double power = 0;
        var normal = ZigguratSampler.NormalizedGaussian.of(RandomSource.MT_64.create(seed));
        for (int i = 0; i < POINTS; i++) {
            double hertz = (i < POINTS / 2 ? i : i - POINTS) / (POINTS * stepSeconds);
            double amplitude = Math.pow(Math.exp(-hertz * hertz / (2 * sigmaHz * sigmaHz)), exponent);
            gain[0][i] = amplitude * normal.sample();
            gain[1][i] = amplitude * normal.sample();
            power += 2 * amplitude * amplitude;
        }
        FastFourierTransformer.transformInPlace(gain, DftNormalization.UNITARY, TransformType.INVERSE);
        double scale = Math.sqrt(POINTS / power);
        for (int i = 0; i < POINTS; i++) {
            gain[0][i] *= scale;
            gain[1][i] *= scale;
        }
    }

    double lengthSeconds() {
        return POINTS * stepSeconds;
    }

    double power(double atSeconds) {
        int i = index(atSeconds);
        return gain[0][i] * gain[0][i] + gain[1][i] * gain[1][i];
    }

    /** Returns the real part of the product of the gain with its conjugate at another instant. */
    double product(double atSeconds, double otherSeconds) {
        int i = index(atSeconds);
        int j = index(otherSeconds);
        return gain[0][i] * gain[0][j] + gain[1][i] * gain[1][j];
    }

    private int index(double atSeconds) {
        // A transform's sequence is periodic.
        return (int) Math.round(atSeconds / stepSeconds) & (POINTS - 1);
    }
}
