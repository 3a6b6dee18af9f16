package org.ionohaul.rare;

import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;
import org.ionohaul.statistics.Estimate;

/**
 * A small chance as splitting found it.
 *
 * @param chance estimate and interval
 * @param standardError of the estimate
 * @param begun first trials
 * @param arrived of how many of them some offspring had what is rare
 * @param trials trials run in all
 */
public record RareChance(Estimate chance, double standardError, int begun, int arrived, long trials) {
    /** With fewer arrivals an interval would be a guess. */
    public static final int FEWEST_ARRIVED = 20;

    /** What one first trial leads to: the sum of what its offspring counts where the rare happened, and how many there were. */
    record FromOne(double weight, int trials) {}

    static RareChance of(List<FromOne> each) {
        int begun = each.size();
        double mean = each.stream().mapToDouble(FromOne::weight).sum() / begun;
        double square = each.stream()
                        .mapToDouble(it -> (it.weight() - mean) * (it.weight() - mean))
                        .sum()
                / (begun - 1.0);
        double error = Math.sqrt(square / begun);
        int arrived = (int) each.stream().filter(it -> it.weight() > 0).count();
        return new RareChance(
                interval(mean, error, arrived),
                error,
                begun,
                arrived,
                each.stream().mapToLong(FromOne::trials).sum());
    }

    /**
     * A range of factors: a mean of few large values and many zeros is skewed, its logarithm hardly. As many degrees of freedom
     * as values that are not zero, less one.
     */
    private static Estimate interval(double mean, double error, int arrived) {
        if (arrived < 2) {
            return new Estimate(mean, 0, 1);
        }
        double quantile = new TDistribution(arrived - 1.0).inverseCumulativeProbability((1 + Estimate.CONFIDENCE) / 2);
        double factor = Math.exp(quantile * error / mean);
        return new Estimate(mean, mean / factor, Math.min(1, mean * factor));
    }

    /** Returns whether enough arrived for the interval to be believed. */
    public boolean isTold() {
        return arrived >= FEWEST_ARRIVED;
    }

    /** Returns how many trials counted one by one would give the same standard error, over those that were run. */
    public double gain() {
        double counted = chance.value() * (1 - chance.value()) / (standardError * standardError);
        return counted / trials;
    }
}
