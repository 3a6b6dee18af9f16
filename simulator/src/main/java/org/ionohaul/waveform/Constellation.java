package org.ionohaul.waveform;

import java.util.Arrays;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Points of the plane with mean energy 1, received coherently in white Gaussian noise.
 *
 * <p>The information density of a sent point x and a received point x + n is i = log2 M - log2 sum_j exp(-(|x - x_j +
 * n|^2 - |n|^2) / N0), after Ungerboeck, "Channel coding with multilevel/phase signals", IEEE Trans. Inf. Theory 28(1),
 * 1982, eq. 5. Its moments are taken over all points and, by Gauss-Hermite quadrature, over the noise.
 */
final class Constellation implements InformationDensity.Source {
    private static final int NODES_IN_PLANE = 28;
    private static final int NODES_ON_LINE = 64;

    private final double[] x;
    private final double[] y;
    private final int representatives;
    private final Nodes inPhase;
    private final Nodes quadrature;

    /**
     * @param representatives how many leading points stand for all others by symmetry
     * @param flat whether all points and the noise that matters lie on one line
     */
    private Constellation(double[] x, double[] y, int representatives, boolean flat) {
        double energy = 0;
        for (int i = 0; i < x.length; i++) {
            energy += (x[i] * x[i] + y[i] * y[i]) / x.length;
        }
        double scale = 1 / Math.sqrt(energy);
        this.x = Arrays.stream(x).map(v -> v * scale).toArray();
        this.y = Arrays.stream(y).map(v -> v * scale).toArray();
        this.representatives = representatives;
        this.inPhase = flat ? Nodes.hermite(NODES_ON_LINE) : Nodes.hermite(NODES_IN_PLANE);
        this.quadrature = flat ? Nodes.SINGLE : inPhase;
    }

    /** Returns evenly spaced points on a line: two are BPSK, two such lines crossed make square QAM. */
    static Constellation line(int points) {
        double[] x = new double[points];
        for (int i = 0; i < points; i++) {
            // Outermost first, in pairs of equal magnitude, so that half the points stand for all.
            x[i] = points - 1 - 2 * i;
        }
        return new Constellation(x, new double[points], points / 2, true);
    }

    /** Returns evenly spaced points on a circle. */
    static Constellation circle(int points) {
        double[] x = new double[points];
        double[] y = new double[points];
        for (int i = 0; i < points; i++) {
            x[i] = Math.cos(2 * Math.PI * i / points);
            y[i] = Math.sin(2 * Math.PI * i / points);
        }
        return new Constellation(x, y, 1, false);
    }

    /** Returns 32 points in a cross: the 6 by 6 grid without its corners. */
    static Constellation cross32() {
        double[] x = new double[32];
        double[] y = new double[32];
        int next = 0;
        for (int quadrant = 0; quadrant < 4; quadrant++) {
            double signX = quadrant % 2 == 0 ? 1 : -1;
            double signY = quadrant < 2 ? 1 : -1;
            for (int cell = 0; cell < 8; cell++) {
                x[next] = signX * (1 + 2 * (cell / 3));
                y[next++] = signY * (1 + 2 * (cell % 3));
            }
        }
        return new Constellation(x, y, 8, false);
    }

    @Override
    public InformationDensity.Moments at(double esN0) {
        double mean = 0;
        double square = 0;
        for (int sent = 0; sent < representatives; sent++) {
            for (int i = 0; i < inPhase.at.length; i++) {
                for (int q = 0; q < quadrature.at.length; q++) {
                    double weight = inPhase.weight[i] * quadrature.weight[q] / representatives;
                    double density = density(sent, inPhase.at[i], quadrature.at[q], Math.sqrt(esN0));
                    mean += weight * density;
                    square += weight * density * density;
                }
            }
        }
        return new InformationDensity.Moments(mean, square - mean * mean);
    }

    /** Returns the information density for noise given in units of the square root of N0. */
    private double density(int sent, double noiseX, double noiseY, double amplitude) {
        double sum = 0;
        for (int other = 0; other < x.length; other++) {
            double dx = amplitude * (x[sent] - x[other]);
            double dy = amplitude * (y[sent] - y[other]);
            sum += Math.exp(-(dx * (dx + 2 * noiseX) + dy * (dy + 2 * noiseY)));
        }
        return (Math.log(x.length) - Math.log(sum)) / Math.log(2);
    }

    /** Nodes and weights of an average over a Gaussian variable of variance one half. */
    private static final class Nodes {
        static final Nodes SINGLE = new Nodes(new double[] {0}, new double[] {1});

        private final double[] at;
        private final double[] weight;

        private Nodes(double[] at, double[] weight) {
            this.at = at;
            this.weight = weight;
        }

        static Nodes hermite(int count) {
            GaussIntegrator rule = new GaussIntegratorFactory().hermite(count);
            double[] at = new double[count];
            double[] weight = new double[count];
            for (int i = 0; i < count; i++) {
                at[i] = rule.getPoint(i);
                weight[i] = rule.getWeight(i) / Math.sqrt(Math.PI);
            }
            return new Nodes(at, weight);
        }
    }
}
