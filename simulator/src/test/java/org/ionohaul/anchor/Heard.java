package org.ionohaul.anchor;

import java.util.Arrays;
import org.ionohaul.channel.Decibels;

/** What reaches a receiver, and what it is told beforehand. */
final class Heard {
    /** A complex Gaussian signal rises 10 dB over its mean power in one of 22,000 samples. */
    static final double BLANKED_OVER_MEAN_DB = 10;

    /**
     * By how much a burst of 5 ms raises the median about it: it fills 12 of the 128 samples looked at, and one in 20 of the
     * others is struck, so that the median is that of the lower 58 % of what is not: ln(1 / 0.42) instead of ln 2.
     */
    static final double MEDIAN_RAISED_DB = Decibels.ofRatio(Math.log(1 / 0.42) / Math.log(2));

    private static final double BLANKED_OVER_MEAN = Decibels.toRatio(BLANKED_OVER_MEAN_DB);

    private static final int LOOK = 32;
    private static final int AROUND = 48;

    private final Signal samples;
    private final Signal[] gains;
    private final double noise;
    private final AirCondition condition;

    /**
     * Takes what reaches the receiver.
     *
     * @param samples the signal with noise
     * @param gains the true gain of each path at each sample, for receivers that are told
     * @param noise mean noise power of a sample
     * @param condition delays, powers and Doppler spreads of the paths
     */
    Heard(Signal samples, Signal[] gains, double noise, AirCondition condition) {
        this.samples = samples;
        this.gains = gains;
        this.noise = noise;
        this.condition = condition;
    }

    Signal samples() {
        return samples;
    }

    Signal[] gains() {
        return gains;
    }

    double noise() {
        return noise;
    }

    AirCondition condition() {
        return condition;
    }

    /**
     * Returns which samples the blanker, if it is on, takes away: those far over the mean power around them, told from the median so that
     * impulses don't move it.
     */
    boolean[] blanked() {
        boolean[] blanked = new boolean[samples.length()];
        double limit = 0;
        for (int at = 0; at < blanked.length && condition.isBlanked(); at++) {
            if (at % LOOK == 0) {
                limit = BLANKED_OVER_MEAN * median(at - AROUND, at + LOOK + AROUND) / Math.log(2);
            }
            blanked[at] = samples.power(at) > limit;
        }
        return blanked;
    }

    private double median(int from, int to) {
        int first = Math.max(0, from);
        double[] powers = new double[Math.min(samples.length(), to) - first];
        Arrays.setAll(powers, i -> samples.power(first + i));
        Arrays.sort(powers);
        return powers[powers.length / 2];
    }
}
