package org.ionohaul.channel;

import java.util.function.DoubleUnaryOperator;

/**
 * How often a sampled envelope falls through a level and how long it stays below, in batches long enough to be
 * independent, so that their scatter gives the standard error.
 */
final class Crossings {
    private static final int BATCHES = 100;

    private final double[] ratePerSecond;
    private final double[] shareBelow;

    private Crossings(double[] ratePerSecond, double[] shareBelow) {
        this.ratePerSecond = ratePerSecond;
        this.shareBelow = shareBelow;
    }

    static Crossings of(PathGain gain, double levelDb, double totalSeconds, double stepSeconds) {
        double[] value = new double[2];
        return of(
                seconds -> {
                    gain.at(Math.round(seconds * 1e9), value, 0);
                    return value[0] * value[0] + value[1] * value[1];
                },
                levelDb,
                totalSeconds,
                stepSeconds);
    }

    /** Counts the crossings of a power that is given at any second. */
    static Crossings of(DoubleUnaryOperator power, double levelDb, double totalSeconds, double stepSeconds) {
        double level = Decibels.toRatio(levelDb);
        int steps = (int) Math.round(totalSeconds / BATCHES / stepSeconds);
        double[] rate = new double[BATCHES];
        double[] share = new double[BATCHES];
        for (int batch = 0; batch < BATCHES; batch++) {
            boolean wasBelow = true;
            for (int i = 0; i < steps; i++) {
                boolean isBelow = power.applyAsDouble((batch * (double) steps + i) * stepSeconds) < level;
                rate[batch] += isBelow && !wasBelow ? 1 / (steps * stepSeconds) : 0;
                share[batch] += isBelow ? 1.0 / steps : 0;
                wasBelow = isBelow;
            }
        }
        return new Crossings(rate, share);
    }

    StatisticalCheck rateCheck(String name, double theory) {
        return StatisticalCheck.ofMean(name, ratePerSecond, theory);
    }

    /** Checks that two independent counts have the same mean: batch less batch. */
    StatisticalCheck rateDifference(String name, Crossings other) {
        double[] differences = new double[BATCHES];
        for (int i = 0; i < BATCHES; i++) {
            differences[i] = ratePerSecond[i] - other.ratePerSecond[i];
        }
        return StatisticalCheck.ofMean(name, differences, 0);
    }

    /** Checks the mean fade, total time below over crossings, whose error is that of a ratio of means. */
    StatisticalCheck durationCheck(String name, double theory) {
        double time = 0;
        double count = 0;
        for (int i = 0; i < BATCHES; i++) {
            time += shareBelow[i];
            count += ratePerSecond[i];
        }
        double duration = time / count;
        double[] residuals = new double[BATCHES];
        for (int i = 0; i < BATCHES; i++) {
            residuals[i] = duration + (shareBelow[i] - duration * ratePerSecond[i]) * BATCHES / count;
        }
        return StatisticalCheck.ofMean(name, residuals, theory);
    }
}
