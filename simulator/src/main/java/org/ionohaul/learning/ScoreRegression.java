package org.ionohaul.learning;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How the scores of simulated runs hang on the unknowns: normal, with a mean that is quadratic and a logarithm of the deviation that is
 * linear in them. Scores may be known only to lie in a span (censored). Fitted by maximum likelihood with a weak pull towards
 * straightness: expectation-maximisation for what is censored, weighted least squares for the mean, Fisher's scoring for the
 * deviation (G. J. McLachlan and T. Krishnan, "The EM Algorithm and Extensions"; W. A. Fuller, "Measurement Error Models").
 */
public final class ScoreRegression {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final int MOST_STEPS = 40;
    private static final double SETTLED = 1e-4;

    /** Pulls what bends the mean, and what changes the deviation, towards nothing: as if known to be within 0.3. */
    private static final double BEND_PENALTY = 1 / (0.3 * 0.3);

    /** Keeps slopes within about 3, which no score of unit deviation exceeds. */
    private static final double SLOPE_PENALTY = 1 / (3.0 * 3.0);

    /** A run now and then does what no regression foresees: this share of chance is spread over all scores. */
    private static final double STRAY = 0.005;

    private static final double LEAST_LOG_DEVIATION = -3;
    private static final double MOST_LOG_DEVIATION = 1;

    private final boolean isCrossed;
    private final double[] slopes;
    private final double[] spread;

    private ScoreRegression(boolean isCrossed, double[] slopes, double[] spread) {
        this.isCrossed = isCrossed;
        this.slopes = slopes;
        this.spread = spread;
    }

    /**
     * Fits a regression.
     *
     * @param at unknowns of each simulated run
     * @param spans between which scores each lies
     * @param weights how much each counts, 0 or more
     */
    public static ScoreRegression fit(double[][] at, ScoreSpan[] spans, double[] weights) {
        int unknowns = at[0].length;
        boolean isCrossed = at.length >= 8 * terms(unknowns, true);
        double[][] bent = Arrays.stream(at).map(it -> terms(it, isCrossed)).toArray(double[][]::new);
        double[][] straight =
                Arrays.stream(at).map(ScoreRegression::straightTerms).toArray(double[][]::new);
        Terms mean = new Terms(bent, penalties(bent[0].length, unknowns));
        Terms deviation = new Terms(straight, penalties(unknowns + 1, 0));
        ScoreRegression start = new ScoreRegression(isCrossed, new double[bent[0].length], new double[unknowns + 1]);
        ScoreRegression full = settled(start, mean, deviation, spans, weights);
        double doubt = Math.log(Arrays.stream(weights).sum());
        return settled(
                full,
                mean.without(mean.doubtful(full.slopes, full.precisions(straight, weights), doubt)),
                deviation.without(deviation.doubtful(full.spread, doubled(weights), doubt)),
                spans,
                weights);
    }

    private static ScoreRegression settled(
            ScoreRegression start, Terms mean, Terms deviation, ScoreSpan[] spans, double[] weights) {
        ScoreRegression now = start;
        for (int step = 0; step < MOST_STEPS; step++) {
            ScoreRegression next = now.improved(mean, deviation, spans, weights);
            double moved = distance(now.slopes, next.slopes) + distance(now.spread, next.spread);
            now = next;
            if (moved < SETTLED) {
                break;
            }
        }
        return now;
    }

    private ScoreRegression improved(Terms mean, Terms deviation, ScoreSpan[] spans, double[] weights) {
        double[] precisions = precisions(deviation.values, weights);
        double[] expected = new double[spans.length];
        double[] variance = new double[spans.length];
        for (int i = 0; i < spans.length; i++) {
            double[] moments =
                    spans[i].moments(dot(slopes, mean.values[i]), Math.exp(logDeviation(deviation.values[i])));
            expected[i] = moments[0];
            variance[i] = moments[1];
        }
        double[] nextSlopes = mean.solved(precisions, expected);
        double[] pull = new double[spans.length];
        for (int i = 0; i < spans.length; i++) {
            double residual = expected[i] - dot(nextSlopes, mean.values[i]);
            double logDeviation = logDeviation(deviation.values[i]);
            double squared = (residual * residual + variance[i]) * Math.exp(-2 * logDeviation);
            // One step of scoring: the working response of a log-linear deviation.
            pull[i] = logDeviation + Math.min(2, (squared - 1) / 2);
        }
        return new ScoreRegression(isCrossed, nextSlopes, deviation.solved(doubled(weights), pull));
    }

    private double[] precisions(double[][] straight, double[] weights) {
        double[] precisions = new double[weights.length];
        for (int i = 0; i < weights.length; i++) {
            precisions[i] = weights[i] * Math.exp(-2 * logDeviation(straight[i]));
        }
        return precisions;
    }

    /** The first term is free, the next {@code slopes} are pulled weakly, the others more. */
    private static double[] penalties(int terms, int slopes) {
        double[] penalties = new double[terms];
        Arrays.fill(penalties, BEND_PENALTY);
        Arrays.fill(penalties, 1, slopes + 1, SLOPE_PENALTY);
        penalties[0] = 1e-9;
        return penalties;
    }

    private static double[] doubled(double[] weights) {
        return Arrays.stream(weights).map(it -> 2 * it).toArray();
    }

    private static double distance(double[] a, double[] b) {
        double most = 0;
        for (int i = 0; i < a.length; i++) {
            most = Math.max(most, Math.abs(a[i] - b[i]));
        }
        return most;
    }

    private static int terms(int unknowns, boolean isCrossed) {
        return 1 + 2 * unknowns + (isCrossed ? unknowns * (unknowns - 1) / 2 : 0);
    }

    private static double[] straightTerms(double[] at) {
        double[] terms = new double[at.length + 1];
        terms[0] = 1;
        System.arraycopy(at, 0, terms, 1, at.length);
        return terms;
    }

    private static double[] terms(double[] at, boolean isCrossed) {
        double[] terms = new double[terms(at.length, isCrossed)];
        terms[0] = 1;
        int next = 1;
        for (double it : at) {
            terms[next++] = it;
        }
        for (double it : at) {
            terms[next++] = it * it - 1;
        }
        for (int j = 0; isCrossed && j < at.length; j++) {
            for (int k = 0; k < j; k++) {
                terms[next++] = at[j] * at[k];
            }
        }
        return terms;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private double logDeviation(double[] straightTerms) {
        return Math.max(LEAST_LOG_DEVIATION, Math.min(MOST_LOG_DEVIATION, dot(spread, straightTerms)));
    }

    /** Returns what a run's score is under some values of the unknowns: normal, with this mean and deviation. */
    public ScoreForecast at(double[] unknowns) {
        return new ScoreForecast(
                dot(slopes, terms(unknowns, isCrossed)), Math.exp(logDeviation(straightTerms(unknowns))));
    }

    /**
     * What a run's score will be.
     *
     * @param mean its mean
     * @param deviation its standard deviation, positive
     */
    public record ScoreForecast(double mean, double deviation) {
        /** Returns the logarithm of the chance that it lies in a span, if a stray run may lie anywhere. */
        public double logProbability(ScoreSpan span) {
            double anywhere = NORMAL.cumulativeProbability(span.high()) - NORMAL.cumulativeProbability(span.low());
            return Math.log((1 - STRAY) * probability(span) + STRAY * Math.max(1e-6, anywhere));
        }

        /** Returns the chance that it lies in a span. */
        public double probability(ScoreSpan span) {
            double low = (span.low() - mean) / deviation;
            double high = (span.high() - mean) / deviation;
            double within = low > 0
                    ? NORMAL.survivalProbability(low) - NORMAL.survivalProbability(high)
                    : NORMAL.cumulativeProbability(high) - NORMAL.cumulativeProbability(low);
            return Math.max(0, within);
        }
    }

    /** The terms of a weighted least-squares fit, with how much each is pulled towards nothing. */
    private static final class Terms {
        private static final double LEFT_OUT = 1e9;

        private final double[][] values;
        private final double[] penalties;

        /**
         * Takes terms.
         *
         * @param values each simulated run's
         * @param penalties the pull on each
         */
        private Terms(double[][] values, double[] penalties) {
            this.values = values;
            this.penalties = penalties;
        }

        double[] solved(double[] weights, double[] response) {
            double[] right = new double[penalties.length];
            for (int i = 0; i < values.length; i++) {
                for (int j = 0; j < right.length; j++) {
                    right[j] += weights[i] * values[i][j] * response[i];
                }
            }
            return decomposed(weights)
                    .getSolver()
                    .solve(new ArrayRealVector(right, false))
                    .toArray();
        }

        private CholeskyDecomposition decomposed(double[] weights) {
            int size = penalties.length;
            double[][] left = new double[size][size];
            for (int i = 0; i < values.length; i++) {
                for (int j = 0; j < size; j++) {
                    double weighted = weights[i] * values[i][j];
                    for (int k = 0; k <= j; k++) {
                        left[j][k] += weighted * values[i][k];
                    }
                }
            }
            for (int j = 0; j < size; j++) {
                left[j][j] += penalties[j];
                for (int k = 0; k < j; k++) {
                    left[k][j] = left[j][k];
                }
            }
            return new CholeskyDecomposition(new Array2DRowRealMatrix(left, false), 1e-9, 1e-14);
        }

        /**
         * Returns which terms chance could have made: their square, in standard errors, is below {@code doubt} (G. Schwarz, Ann.
         * Statist. 6, 1978).
         */
        boolean[] doubtful(double[] fitted, double[] weights, double doubt) {
            RealMatrix errors = decomposed(weights).getSolver().getInverse();
            boolean[] doubtful = new boolean[fitted.length];
            for (int j = 1; j < fitted.length; j++) {
                doubtful[j] = fitted[j] * fitted[j] < doubt * errors.getEntry(j, j);
            }
            return doubtful;
        }

        Terms without(boolean[] leftOut) {
            double[] stronger = penalties.clone();
            for (int j = 0; j < stronger.length; j++) {
                stronger[j] = leftOut[j] ? LEFT_OUT : stronger[j];
            }
            return new Terms(values, stronger);
        }
    }
}
