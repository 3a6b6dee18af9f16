package org.ionohaul.waveform;

import java.util.Arrays;

/**
 * What bursts of noise cost a decoder that knows nothing of them and weighs all symbols as if their noise were even.
 *
 * <p>Wherever two code words differ, it adds up how much nearer the symbols are to one than to the other. By Chernoff's bound
 * the sum points the wrong way with an exponent that grows with each symbol by at most
 *
 * <pre>E = max over t of -ln sum of p exp(x (t^2 r - 2 t a))</pre>
 *
 * over the levels of noise, p being a level's share of symbols, a the amplitude left there, r its noise over that between
 * bursts, and x Es/N0 times the separation of the symbols. Even noise of x = E has the same exponent. At low SINR that is
 * the noise of the same mean power, whatever the code (Lapidoth, "Nearest neighbor decoding for additive non-Gaussian noise
 * channels", IEEE Trans. Inf. Theory 42(5), 1996); at high SINR a few symbols decide, and the strongest of noise counts for
 * more. Belongs to one thread.
 */
final class BlindMetric {
    private static final int MOST_STEPS = 40;

    /** Steps end where the next one adds less than this part of the exponent; what it adds is foretold, not asked for. */
    private static final double TOLERANCE = 0.02;

    /** An exponent of so much is as good as certain for any modulation, and still a number. */
    private static final double MOST = 300;

    private final double separation;
    private double[] shares = new double[4];
    private double[] amplitudes = new double[4];
    private double[] noises = new double[4];
    private double erased;
    private int levels;
    private double scale;

    /** Prepares for a modulation whose neighbouring symbols are so far apart ({@link Modulation#separation()}). */
    BlindMetric(double separation) {
        this.separation = separation;
    }

    /** Begins anew: what was asked before changes nothing. */
    void begin() {
        scale = 0;
        erase(0);
    }

    /** Forgets the levels, for those of another sub-band or instant, where nothing is left of a share of symbols. */
    void erase(double share) {
        erased = share;
        levels = 0;
    }

    /**
     * Adds a level of noise.
     *
     * @param share of symbols on it; zero is as good as not added
     * @param amplitude part of the signal's amplitude left there, from 0 to 1
     * @param noise noise there, over that between bursts
     */
    void add(double share, double amplitude, double noise) {
        if (share <= 0) {
            return;
        }
        if (levels == shares.length) {
            shares = Arrays.copyOf(shares, 2 * levels);
            amplitudes = Arrays.copyOf(amplitudes, 2 * levels);
            noises = Arrays.copyOf(noises, 2 * levels);
        }
        shares[levels] = share;
        amplitudes[levels] = amplitude;
        noises[levels] = noise;
        levels++;
    }

    /**
     * Returns the Es/N0 of even noise that would cost as much.
     *
     * <p>The logarithm of the sum is convex in t, so Newton's steps find its lowest point; where they don't get shorter, the
     * bracket is halved. They begin at the t of the sub-band or instant before, which is not far from it: each step costs an
     * exponential a level.
     *
     * @param esN0 Es/N0 between bursts, zero or more
     */
    double evenEsN0(double esN0) {
        double x = Math.min(MOST, separation * esN0);
        if (x <= 0 || levels == 0) {
            return 0;
        }
        double low = 0;
        double high = evenScale();
        double next = scale > 0 && scale < high ? scale : upper(x, high);
        double moved = high;
        double exponent = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            scale = next;
            double sum = erased;
            double first = 0;
            double second = 0;
            for (int level = 0; level < levels; level++) {
                double noise = noises[level];
                double amplitude = amplitudes[level];
                double term = shares[level] * Exponentials.exp(x * scale * (scale * noise - 2 * amplitude));
                double slope = 2 * x * (scale * noise - amplitude);
                sum += term;
                first += term * slope;
                second += term * (slope * slope + 2 * x * noise);
            }
            // With slope s = first / sum and curvature c = second / sum - s^2 of the logarithm, s / c and s^2 / (2 c).
            double inverse = 1 / (second * sum - first * first);
            double back = first * sum * inverse;
            double ahead = first * first * inverse / 2;
            exponent = -Exponentials.log(sum);
            if (ahead <= TOLERANCE * exponent) {
                exponent += ahead;
                double best = scale - back;
                scale = best < low ? low : best > high ? high : best;
                break;
            }
            if (first < 0) {
                low = scale;
            } else {
                high = scale;
            }
            next = scale - back;
            if (!(next > low && next < high && Math.abs(next - scale) <= moved / 2)) {
                next = (low + high) / 2;
            }
            moved = Math.abs(next - scale);
        }
        return exponent > 0 ? exponent / separation : 0;
    }

    /** Returns the t of noise of the same mean, which is at or above the best one. */
    private double evenScale() {
        double amplitude = 0;
        double noise = 0;
        for (int level = 0; level < levels; level++) {
            amplitude += shares[level] * amplitudes[level];
            noise += shares[level] * noises[level];
        }
        return amplitude / noise;
    }

    /** Returns a t from which no level alone makes a bound of 1, if that is below the highest. */
    private double upper(double x, double highest) {
        double lowest = highest;
        for (int level = 0; level < levels; level++) {
            double a = amplitudes[level];
            double r = noises[level];
            lowest = Math.min(lowest, (a + Math.sqrt(a * a - r / x * Math.log(shares[level]))) / r);
        }
        return lowest;
    }
}
