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
    private static final int HALVINGS = 12;

    /** An exponent of so much is as good as certain for any modulation, and still a number. */
    private static final double MOST = 300;

    private final double separation;
    private double[] shares = new double[4];
    private double[] amplitudes = new double[4];
    private double[] noises = new double[4];
    private double erased;
    private int levels;

    /** Prepares for a modulation whose neighbouring symbols are so far apart ({@link Modulation#separation()}). */
    BlindMetric(double separation) {
        this.separation = separation;
    }

    /** Begins anew, with a share of symbols of which nothing is left. */
    void begin(double erasedShare) {
        erased = erasedShare;
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
     * @param esN0 Es/N0 between bursts, zero or more
     */
    double evenEsN0(double esN0) {
        double x = Math.min(MOST, separation * esN0);
        if (x <= 0 || levels == 0) {
            return 0;
        }
        double low = 0;
        double high = upper(x);
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (low + high) / 2;
            if (isRising(x, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        double t = (low + high) / 2;
        double sum = erased;
        for (int level = 0; level < levels; level++) {
            sum += shares[level] * Math.exp(x * t * (t * noises[level] - 2 * amplitudes[level]));
        }
        return Math.max(0, -Math.log(sum)) / separation;
    }

    /** Returns a t at or above the best one: noise of the same mean asks for more, and no level alone makes a bound of 1. */
    private double upper(double x) {
        double amplitude = 0;
        double noise = 0;
        double lowest = Double.POSITIVE_INFINITY;
        for (int level = 0; level < levels; level++) {
            double a = amplitudes[level];
            double r = noises[level];
            amplitude += shares[level] * a;
            noise += shares[level] * r;
            lowest = Math.min(lowest, (a + Math.sqrt(a * a - r / x * Math.log(shares[level]))) / r);
        }
        return Math.min(lowest, amplitude / noise);
    }

    /** Returns whether the sum, which is convex in t, rises at t. */
    private boolean isRising(double x, double t) {
        double slope = 0;
        for (int level = 0; level < levels; level++) {
            double r = noises[level];
            double a = amplitudes[level];
            slope += shares[level] * Math.exp(x * t * (t * r - 2 * a)) * (t * r - a);
        }
        return slope > 0;
    }
}
