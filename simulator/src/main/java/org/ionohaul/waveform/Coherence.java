package org.ionohaul.waveform;

import org.apache.commons.numbers.gamma.Erf;

/** What is left of a path's power when its gain is added up over a time in which it changes. */
final class Coherence {
    /** Below this many radians the series is exact to 1e-8, and the closed form begins to lose digits. */
    private static final double SLOW = 0.03;

    private Coherence() {}

    /**
     * Returns the mean power of the gain's mean over a time T, over the gain's own: twice the integral of (1 - x) exp(-(u
     * x)^2 / 2) from 0 to 1, for a correlation of exp(-(u t / T)^2 / 2) after a time t (ITU-R F.1487 with u = pi x Doppler
     * spread x T). For slow paths 1 - u^2 / 12.
     */
    static double power(double u) {
        if (u < SLOW) {
            return 1 - u * u / 12;
        }
        double integral = Math.sqrt(Math.PI / 2) * Erf.value(u / Math.sqrt(2)) / u;
        return 2 * (integral + Math.expm1(-u * u / 2) / (u * u));
    }
}
