package org.ionohaul.channel;

import org.ionohaul.limits.OutOfRange;

/**
 * Times at which the sky wave is weaker or stronger than usual, coming and going by chance: drop-outs, sporadic E. Times with
 * and without follow each other, both of exponential length (an alternating renewal process), so that when the next comes is
 * never foreseen. Both directions have them together, and a ground wave has none.
 *
 * @param betweenSeconds mean time from the end of one to the beginning of the next, 1 or more
 * @param lengthSeconds mean length of one, 0.1 or more: what is shorter is fading or noise
 * @param changeDb by how much the sky wave's level is higher meanwhile, in dB, within 100; negative for lower, 0 for no spells
 */
public record Spells(double betweenSeconds, double lengthSeconds, double changeDb) {
    /** No spells. */
    public static final Spells NONE = new Spells(1, 1, 0);

    /** Checks every value. */
    public Spells {
        OutOfRange.unless(
                betweenSeconds >= 1 && betweenSeconds < 1e7,
                "betweenSeconds",
                "must be from 1 s to ten million seconds",
                betweenSeconds);
        OutOfRange.unless(
                lengthSeconds >= 0.1 && lengthSeconds < 1e7,
                "lengthSeconds",
                "must be from 0.1 s to ten million seconds",
                lengthSeconds);
        OutOfRange.unless(Math.abs(changeDb) <= 100, "changeDb", "must be from 0 to 100 dB", changeDb);
    }

    /** Returns the share of the time that they last, from 0 to 1. */
    public double share() {
        return changeDb == 0 ? 0 : lengthSeconds / (lengthSeconds + betweenSeconds);
    }

    /** Returns the mean of the power ratio that they make, over all time. */
    double meanRatio() {
        return 1 + share() * (Decibels.toRatio(changeDb) - 1);
    }
}
