package org.ionohaul.channel;

/**
 * Slow variation of the path's median level: a Gauss-Markov process in dB.
 *
 * @param deviationDb stationary standard deviation in dB, zero or more (0 switches it off)
 * @param timeConstantSeconds lag at which the correlation has fallen to 1/e, 1 or more: below that it is
 *     not slow, and belongs to the paths' fading
 */
public record SlowVariation(double deviationDb, double timeConstantSeconds) {
    /** No slow variation. */
    public static final SlowVariation NONE = new SlowVariation(0, 1);

    /** Checks both values. */
    public SlowVariation {
        if (!(deviationDb >= 0 && deviationDb < 100)) {
            throw new IllegalArgumentException("deviationDb must be from 0 to 100: " + deviationDb);
        }
        if (!(timeConstantSeconds >= 1 && timeConstantSeconds < 1e6)) {
            throw new IllegalArgumentException("timeConstantSeconds must be 1 to a million: " + timeConstantSeconds);
        }
    }
}
