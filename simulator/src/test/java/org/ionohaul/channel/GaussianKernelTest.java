package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The kernel's second moments without any chance: the sum over the grid of products of its weights. */
final class GaussianKernelTest {
    private static final int GRID = 40;

    /** Interpolated between tabulated places, the variance is off by at most twice the interpolation error. */
    @Test
    void varianceIsOneAtEveryPlace() {
        int checked = 0;
        for (double instant = 15; instant < 16; instant += 0.00037) {
            assertEquals(1, covariance(instant, instant), 2e-5);
            checked++;
        }
        assertEquals(2703, checked);
    }

    /**
     * Autocorrelation exp(-t^2 / (4 s^2)), s being the grid step, up to the ripple of the grid. Products at two places
     * ripple as their middle does, by 2 exp(-pi^2); normalised by the variances at the places themselves, at worst a
     * step apart and out of phase with the middle, that makes 4 exp(-pi^2 - 1/4) = 1.61e-4.
     */
    @Test
    void autocorrelationIsGaussianUpToTheRippleOfTheGrid() {
        double worst = 0;
        for (double instant = 12; instant < 13; instant += 0.043) {
            for (double lag = 0; lag < 12; lag += 0.11) {
                double error = covariance(instant, instant + lag) - Math.exp(-lag * lag / 4);
                worst = Math.max(worst, Math.abs(error));
            }
        }
        assertEquals(1.61e-4, worst, 0.15e-4);
    }

    /** ITU-R F.1487: sigma is half the spread. At 1 Hz the correlation falls to 1/e at 0.4502 s, which is 2 s. */
    @Test
    void widthFollowsFromTheSpread() {
        assertEquals(0.4502 / 2, GaussianKernel.stepSeconds(1), 0.00005);
        assertEquals(4.5016 / 2, GaussianKernel.stepSeconds(0.1), 0.00005);
    }

    private static double covariance(double one, double other) {
        double sum = 0;
        for (int point = 0; point < GRID; point++) {
            sum += weight(one, point) * weight(other, point);
        }
        return sum;
    }

    /** Returns what the kernel makes at an instant of a single one at a grid point. */
    private static double weight(double instant, int point) {
        double[] noise = new double[2 * GRID];
        noise[2 * point] = 1;
        double[] gain = new double[2];
        int before = (int) instant;
        GaussianKernel.apply(noise, 2 * (before - GaussianKernel.POINTS / 2 + 1), instant - before, gain, 0);
        return gain[0];
    }
}
