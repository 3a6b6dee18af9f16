package org.ionohaul.waveform;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.special.Gamma;

/**
 * One of M orthogonal tones, detected by its energy: phase unknown, amplitude known.
 *
 * <p>With r the magnitude at a tone in units of the noise, the likelihood of that tone is L = I0(2 sqrt(Es/N0) r)
 * (Proakis, Digital Communications, noncoherent detection of orthogonal signals), and the information density is log2 M
 * - log2 (1 + Z), Z = sum of the other tones' L over the sent tone's. For a variable a = 1 + Z the identities
 *
 * <pre>
 * ln a              = integral over all u of       exp(-e^u) - exp(-a e^u)  du
 * ln^2 a + 2 C ln a = integral over all u of -2 u (exp(-e^u) - exp(-a e^u)) du     (C: Euler's constant)
 * </pre>
 *
 * (Frullani, and its derivative in the exponent of the gamma integral) turn both moments into integrals over one variable
 * of Laplace transforms of L, whatever M is; no M-fold quadrature, no random numbers.
 */
final class OrthogonalTones implements InformationDensity.Source {
    private static final double NOTHING_BELOW = 0.003;
    private static final double EVERYTHING_ABOVE = 80;
    private static final double FARTHEST_NOISE = 6.5;
    private static final double STEP = 0.25;
    private static final double HIGHEST_EXPONENT = 4;
    private static final int NODES = 64;

    private final int tones;
    private final GaussIntegrator rule = new GaussIntegratorFactory().legendre(NODES);

    OrthogonalTones(int tones) {
        this.tones = tones;
    }

    @Override
    public InformationDensity.Moments at(double esN0) {
        if (esN0 < NOTHING_BELOW) {
            return new InformationDensity.Moments(0, 0);
        }
        return esN0 > EVERYTHING_ABOVE ? new InformationDensity.Moments(symbolBits(), 0) : integrated(esN0);
    }

    private double symbolBits() {
        return Math.log(tones) / Math.log(2);
    }

    private InformationDensity.Moments integrated(double esN0) {
        Likelihood sent = likelihood(esN0, true);
        Likelihood other = likelihood(esN0, false);
        double mean = 0;
        double skewed = 0;
        for (double u = -esN0 - 30; u <= HIGHEST_EXPONENT; u += STEP) {
            double othersHeard = 1 - Math.pow(other.transform(u), tones - 1);
            mean += STEP * othersHeard * sent.transform(u);
            skewed += STEP * othersHeard * sent.skewedTransform(u);
        }
        double square = -2 * (skewed + Gamma.GAMMA * mean);
        double bitsPerNat = 1 / Math.log(2);
        return new InformationDensity.Moments(
                symbolBits() - bitsPerNat * mean, bitsPerNat * bitsPerNat * (square - mean * mean));
    }

    private Likelihood likelihood(double esN0, boolean sent) {
        double centre = sent ? Math.sqrt(esN0) : 0;
        double lowest = Math.max(0, centre - FARTHEST_NOISE);
        double half = (centre + FARTHEST_NOISE - lowest) / 2;
        double[] log = new double[NODES];
        double[] weight = new double[NODES];
        for (int i = 0; i < NODES; i++) {
            double magnitude = lowest + half * (1 + rule.getPoint(i));
            double argument = 2 * Math.sqrt(esN0) * magnitude;
            log[i] = argument + Math.log(scaledBesselI0(argument));
            double rician = sent ? scaledBesselI0(argument) : 1;
            double offset = magnitude - centre;
            weight[i] = half * rule.getWeight(i) * 2 * magnitude * Math.exp(-offset * offset) * rician;
        }
        return new Likelihood(log, weight);
    }

    /** Returns I0(x) exp(-x) by the trapezoidal rule on its integral over a circle, exact for periodic functions. */
    private static double scaledBesselI0(double x) {
        int points = 128;
        double sum = 0;
        for (int k = 0; k < points; k++) {
            sum += Math.exp(x * (Math.cos(Math.PI * (k + 0.5) / points) - 1));
        }
        return sum / points;
    }

    /** The likelihood L of a tone as a random variable: its logarithm at the nodes, and their weights. */
    private static final class Likelihood {
        private final double[] log;
        private final double[] weight;

        private Likelihood(double[] log, double[] weight) {
            this.log = log;
            this.weight = weight;
        }

        /** Returns E exp(-e^u L). */
        double transform(double u) {
            double sum = 0;
            for (int i = 0; i < log.length; i++) {
                sum += weight[i] * Math.exp(-Math.exp(u + log[i]));
            }
            return sum;
        }

        /** Returns E (u + ln L) exp(-e^u L). */
        double skewedTransform(double u) {
            double sum = 0;
            for (int i = 0; i < log.length; i++) {
                sum += weight[i] * (u + log[i]) * Math.exp(-Math.exp(u + log[i]));
            }
            return sum;
        }
    }
}
