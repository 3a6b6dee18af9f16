package org.ionohaul.channel;

import java.util.Arrays;

/**
 * How a stretch of time divides by what bursts of noise (impulses, static, a receiver overrun) add to the noise between
 * them: levels, each with its share of the stretch and the length of a burst. Filled anew by {@link Reception#bursts}; belongs to one thread.
 *
 * <p>Bursts of different origin are levels of their own even where they coincide: the mean is exact, a level on which two
 * meet is not told.
 */
public final class NoiseBursts {
    private double[] powers = new double[4];
    private double[] shares = new double[4];
    private double[] lengths = new double[4];
    private int levels;

    /** Forgets all levels: nothing but the noise between the bursts. */
    public void clear() {
        levels = 0;
    }

    /**
     * Adds a burst.
     *
     * @param power what it adds to the noise, over the reference of {@link Reception#powers}, zero or more
     * @param share its share of the stretch, from 0 to 1
     * @param seconds how long it lasts, within the stretch or beyond it, positive
     */
    public void add(double power, double share, double seconds) {
        for (int level = 0; level < levels; level++) {
            if (powers[level] == power) {
                shares[level] += share;
                return;
            }
        }
        if (levels == powers.length) {
            powers = Arrays.copyOf(powers, 2 * levels);
            shares = Arrays.copyOf(shares, 2 * levels);
            lengths = Arrays.copyOf(lengths, 2 * levels);
        }
        powers[levels] = power;
        shares[levels] = share;
        lengths[levels] = seconds;
        levels++;
    }

    /** Returns how many levels there are, zero without bursts. */
    public int levels() {
        return levels;
    }

    /** Returns what is added to the noise at a level. */
    public double power(int level) {
        return powers[level];
    }

    /** Returns the share of the stretch at a level, from 0 to 1 (up to rounding). */
    public double share(int level) {
        return shares[level];
    }

    /** Returns how long a burst of a level lasts, in seconds, positive; the first one's if several are on it. */
    public double seconds(int level) {
        return lengths[level];
    }

    /** Returns what the bursts add to the noise in the mean over the stretch. */
    public double meanPower() {
        double mean = 0;
        for (int level = 0; level < levels; level++) {
            mean += shares[level] * powers[level];
        }
        return mean;
    }
}
