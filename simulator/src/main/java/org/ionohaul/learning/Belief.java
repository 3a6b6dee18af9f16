package org.ionohaul.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * What is believed of the unknowns: equally likely draws of their scores, and by how much the evidence has gone up or down. Drawn by
 * annealing from the standard normal prior: likelihoods count for more and more, draws are taken again by their weights and moved
 * by a random walk (sequential Monte Carlo: P. Del Moral, A. Doucet, A. Jasra, J. R. Stat. Soc. B 68, 2006).
 *
 * @param draws a score for each unknown, each
 * @param logEvidence logarithm of the mean likelihood under the prior
 */
public record Belief(List<double[]> draws, double logEvidence) {
    private static final double KEPT_SHARE = 0.5;
    private static final int MOVES = 8;

    /** Copies the list. */
    public Belief {
        draws = List.copyOf(draws);
    }

    /** Returns draws of the prior. */
    public static List<double[]> prior(int unknowns, int count, UniformRandomProvider random) {
        ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
        List<double[]> draws = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double[] scores = new double[unknowns];
            for (int j = 0; j < unknowns; j++) {
                scores[j] = normal.sample();
            }
            draws.add(scores);
        }
        return draws;
    }

    /**
     * Returns what is believed after evidence.
     *
     * @param logLikelihood logarithm of the chance of the evidence under some scores, finite
     */
    static Belief after(
            ToDoubleFunction<double[]> logLikelihood, int unknowns, int count, UniformRandomProvider random) {
        List<double[]> draws = prior(unknowns, count, random);
        double[] logs = draws.stream().mapToDouble(logLikelihood).toArray();
        double counted = 0;
        double logEvidence = 0;
        while (counted < 1) {
            double step = nextStep(logs, 1 - counted);
            double[] weights = weights(logs, step);
            logEvidence += logMean(logs, step);
            counted = step >= 1 - counted ? 1 : counted + step;
            Weighed moved = moved(resampled(draws, logs, weights, random), counted, logLikelihood, random);
            draws = moved.draws;
            logs = moved.logs;
        }
        return new Belief(draws, logEvidence);
    }

    /** The largest step that keeps half of the draws effective. */
    private static double nextStep(double[] logs, double most) {
        if (Weights.effective(weights(logs, most)) >= KEPT_SHARE * logs.length) {
            return most;
        }
        double low = 0;
        double high = most;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (Weights.effective(weights(logs, middle)) >= KEPT_SHARE * logs.length) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.max(low, 1e-6 * most);
    }

    private static double[] weights(double[] logs, double step) {
        double[] weighed = new double[logs.length];
        for (int i = 0; i < logs.length; i++) {
            weighed[i] = step * logs[i];
        }
        return Weights.ofLogs(weighed);
    }

    private static double logMean(double[] logs, double step) {
        double[] weighed = new double[logs.length];
        for (int i = 0; i < logs.length; i++) {
            weighed[i] = step * logs[i];
        }
        return Weights.logMean(weighed);
    }

    /** Draws with the logarithms of their likelihoods. */
    private static final class Weighed {
        private final List<double[]> draws;
        private final double[] logs;

        private Weighed(List<double[]> draws, double[] logs) {
            this.draws = draws;
            this.logs = logs;
        }
    }

    private static Weighed resampled(
            List<double[]> draws, double[] logs, double[] weights, UniformRandomProvider random) {
        List<double[]> taken = new ArrayList<>();
        double[] takenLogs = new double[logs.length];
        double at = random.nextDouble() / logs.length;
        double sum = 0;
        int from = -1;
        for (int i = 0; i < logs.length; i++) {
            while (from < logs.length - 1 && sum <= at) {
                sum += weights[++from];
            }
            taken.add(draws.get(from));
            takenLogs[i] = logs[from];
            at += 1.0 / logs.length;
        }
        return new Weighed(taken, takenLogs);
    }

    private static Weighed moved(
            Weighed start, double counted, ToDoubleFunction<double[]> logLikelihood, UniformRandomProvider random) {
        List<double[]> draws = new ArrayList<>(start.draws);
        double[] logs = start.logs.clone();
        double[][] root = stepRoot(draws);
        ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
        for (int move = 0; move < MOVES; move++) {
            for (int i = 0; i < logs.length; i++) {
                double[] now = draws.get(i);
                double[] proposed = stepped(now, root, normal);
                double log = logLikelihood.applyAsDouble(proposed);
                double gain = counted * (log - logs[i]) + (squares(now) - squares(proposed)) / 2;
                if (Math.log(random.nextDouble()) < gain) {
                    draws.set(i, proposed);
                    logs[i] = log;
                }
            }
        }
        return new Weighed(draws, logs);
    }

    private static double squares(double[] scores) {
        double sum = 0;
        for (double score : scores) {
            sum += score * score;
        }
        return sum;
    }

    private static double[] stepped(double[] from, double[][] root, ZigguratSampler.NormalizedGaussian normal) {
        double[] to = from.clone();
        for (int k = 0; k < from.length; k++) {
            double chance = normal.sample();
            for (int j = k; j < from.length; j++) {
                to[j] += root[j][k] * chance;
            }
        }
        return to;
    }

    /** The step of a random walk that suits a normal target: 2.38 deviations over the root of the number of unknowns. */
    private static double[][] stepRoot(List<double[]> draws) {
        int unknowns = draws.get(0).length;
        double[] mean = new double[unknowns];
        for (double[] draw : draws) {
            for (int j = 0; j < unknowns; j++) {
                mean[j] += draw[j] / draws.size();
            }
        }
        double[][] covariance = new double[unknowns][unknowns];
        double scale = 2.38 * 2.38 / unknowns;
        for (double[] draw : draws) {
            for (int j = 0; j < unknowns; j++) {
                for (int k = 0; k < unknowns; k++) {
                    covariance[j][k] += scale * (draw[j] - mean[j]) * (draw[k] - mean[k]) / draws.size();
                }
            }
        }
        for (int j = 0; j < unknowns; j++) {
            covariance[j][j] += 1e-6;
        }
        return new CholeskyDecomposition(new Array2DRowRealMatrix(covariance, false), 1e-9, 0)
                .getL()
                .getData();
    }
}
