package org.ionohaul.waveform;

import org.apache.commons.numbers.gamma.Erfc;

/** What a receiver does about samples that stand far over the mean. */
public enum ImpulseDefence {
    /** Nothing. */
    NONE,
    /** It cuts them down to the limit. */
    LIMITER,
    /** It takes them out. */
    BLANKER;

    private static final double NEAR_ZERO = 1e-3;

    /**
     * Returns how much of a Gaussian signal's amplitude is left in what it lets through: the part that is a scaled copy of
     * what came (Bussgang). For clipping Ochiai and Imai, "Performance analysis of deliberately clipped OFDM signals", IEEE
     * Trans. Commun. 50(1), 2002; for blanking Zhidkov, "Analysis and comparison of several simple impulsive noise
     * mitigation schemes for OFDM receivers", IEEE Trans. Commun. 56(1), 2008; both from memory, and checked by drawing.
     *
     * @param limit limit of the power of a sample over the mean power of samples, positive
     */
    double amplitude(double limit) {
        return amplitude(limit, power(limit));
    }

    /** Returns the same where the mean power that it lets through is known. */
    double amplitude(double limit, double power) {
        return this == LIMITER ? power + Math.sqrt(Math.PI * limit) / 2 * Erfc.value(Math.sqrt(limit)) : power;
    }

    /** Returns the mean power of what it lets through, over that of what came. */
    double power(double limit) {
        return switch (this) {
            case NONE -> 1;
            case LIMITER -> within(limit);
            case BLANKER -> 1 - (1 + limit) * Math.exp(-limit);
        };
    }

    /** Returns the share of samples that it lets through at all. */
    double passes(double limit) {
        return this == BLANKER ? within(limit) : 1;
    }

    /** Returns the share of samples within a limit; far from zero without the library's slow function for what is near it. */
    private static double within(double limit) {
        return limit < NEAR_ZERO ? -Math.expm1(-limit) : 1 - Math.exp(-limit);
    }
}
