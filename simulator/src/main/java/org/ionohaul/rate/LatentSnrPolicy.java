package org.ionohaul.rate;

import java.util.Arrays;
import java.util.Locale;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Keeps a belief about the path's SNR as probabilities on a grid, widens it with time, sharpens it by Bayes' rule with
 * every frame's fate and every report, and takes the data rate that promises most (after V. Saxena et al., "Reinforcement
 * learning for efficient and tuning-free link adaptation", IEEE TWC 2022, 10.1109/TWC.2021.3098972; here the best
 * expectation is taken instead of a sample from the belief). One latent number links all data rates: a lost frame at data rate 5
 * also says something about data rate 6.
 *
 * <p>The bench curves are softened by a floor, because on a fading path frames get lost far above their need.
 */
public final class LatentSnrPolicy implements RatePolicy {
    private static final double LOWEST_DB = -30;
    private static final double STEP_DB = 0.5;
    private static final int POINTS = 161;
    private static final double LEAST_CHANCE = 0.03;
    private static final int WIDEST_STEPS = 40;

    private final RatePolicyRules.LatentSnr rules;
    private final double[] bytesPerSecond;
    private final double[][] chances;
    private final double[] belief = new double[POINTS];
    private final double[] scratch = new double[POINTS];
    private final double[] kernel = new double[2 * WIDEST_STEPS + 1];
    private int chosen;
    private long believedNanos;
    private boolean isFirst = true;

    /** Begins at the start data rate of a mode with such data rates. */
    public LatentSnrPolicy(RatePolicyRules.LatentSnr rules, DesignRates rates) {
        LossCurves curves = rates.curves();
        this.rules = rules;
        chosen = rules.startDataRate();
        bytesPerSecond = new double[curves.dataRateCount()];
        chances = new double[curves.dataRateCount()][POINTS];
        for (int at = 0; at < bytesPerSecond.length; at++) {
            bytesPerSecond[at] = rates.cleanBytesPerSecond(at + 1);
            fillChances(chances[at], curves, at + 1);
        }
        startBelief(curves);
    }

    private static void fillChances(double[] row, LossCurves curves, int dataRate) {
        for (int point = 0; point < POINTS; point++) {
            double bench = 1 - curves.loss(dataRate, snrDb(point));
            row[point] = LEAST_CHANCE + (1 - 2 * LEAST_CHANCE) * bench;
        }
    }

    /** The belief before the first over stands where the start data rate begins to work well. */
    private void startBelief(LossCurves curves) {
        double needDb = Math.max(LOWEST_DB, Math.min(curves.needDb(chosen, 0.1), snrDb(POINTS - 1)));
        NormalDistribution prior = NormalDistribution.of(needDb + 1, rules.priorDeviationDb());
        for (int point = 0; point < POINTS; point++) {
            belief[point] = prior.density(snrDb(point));
        }
        normalise();
    }

    private static double snrDb(int point) {
        return LOWEST_DB + point * STEP_DB;
    }

    @Override
    public int chooseDataRate(long nowNanos) {
        if (isFirst) {
            isFirst = false;
            believedNanos = nowNanos;
            return chosen;
        }
        widen(nowNanos);
        chosen = 1;
        for (int dataRate = 2; dataRate <= bytesPerSecond.length; dataRate++) {
            if (promise(dataRate) > promise(chosen)) {
                chosen = dataRate;
            }
        }
        return chosen;
    }

    private double promise(int dataRate) {
        double success = 0;
        for (int point = 0; point < POINTS; point++) {
            success += belief[point] * chances[dataRate - 1][point];
        }
        return success * bytesPerSecond[dataRate - 1];
    }

    private void widen(long nowNanos) {
        double deviationDb = rules.forgettingDbPerRootSecond() * Math.sqrt((nowNanos - believedNanos) / 1e9);
        believedNanos = nowNanos;
        if (deviationDb > 0) {
            convolve(Math.min(deviationDb, WIDEST_STEPS * STEP_DB / 3));
        }
    }

    private void convolve(double deviationDb) {
        double scale = STEP_DB / deviationDb;
        for (int at = 0; at < kernel.length; at++) {
            double distance = (at - WIDEST_STEPS) * scale;
            kernel[at] = Math.exp(-distance * distance / 2);
        }
        System.arraycopy(belief, 0, scratch, 0, POINTS);
        Arrays.fill(belief, 0);
        for (int from = 0; from < POINTS; from++) {
            for (int at = Math.max(0, WIDEST_STEPS - from);
                    at < Math.min(kernel.length, POINTS + WIDEST_STEPS - from);
                    at++) {
                belief[from + at - WIDEST_STEPS] += scratch[from] * kernel[at];
            }
        }
        normalise();
    }

    @Override
    public void onAcknowledged(long nowNanos, int atDataRate, int framesSent, int framesLost, double snrDb) {
        learn(nowNanos, atDataRate, framesSent, framesLost);
        if (!Double.isNaN(snrDb) && rules.estimateDeviationDb() > 0) {
            hear(snrDb);
        }
    }

    @Override
    public void onSilence(long nowNanos, int atDataRate, int framesSent) {
        learn(nowNanos, atDataRate, 1, 1);
    }

    private void learn(long nowNanos, int dataRate, int sent, int lost) {
        widen(nowNanos);
        for (int point = 0; point < POINTS; point++) {
            double chance = chances[dataRate - 1][point];
            belief[point] *= Math.pow(chance, sent - lost) * Math.pow(1 - chance, lost);
        }
        normalise();
    }

    private void hear(double reportedDb) {
        for (int point = 0; point < POINTS; point++) {
            double distance = (snrDb(point) - reportedDb) / rules.estimateDeviationDb();
            belief[point] *= Math.exp(-Math.min(distance * distance / 2, 50));
        }
        normalise();
    }

    private void normalise() {
        double sum = 0;
        for (double share : belief) {
            sum += share;
        }
        for (int point = 0; point < POINTS; point++) {
            belief[point] = sum > 0 ? belief[point] / sum : 1.0 / POINTS;
        }
    }

    @Override
    public String reason() {
        double mean = 0;
        double square = 0;
        for (int point = 0; point < POINTS; point++) {
            mean += belief[point] * snrDb(point);
            square += belief[point] * snrDb(point) * snrDb(point);
        }
        double deviation = Math.sqrt(Math.max(0, square - mean * mean));
        return String.format(
                Locale.ROOT,
                "believes %.1f dB ± %.1f dB, expects %.1f bytes a second",
                mean,
                deviation,
                promise(chosen));
    }
}
