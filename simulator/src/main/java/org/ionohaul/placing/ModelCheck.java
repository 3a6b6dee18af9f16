package org.ionohaul.placing;

import java.util.List;
import org.ionohaul.statistics.HolmCorrection;

/**
 * Whether runs as a whole lie among simulated ones as they should if the model were right.
 *
 * <p>Each run scores what the standard normal variable of its rank would; a range of ranks scores the mean over it (mid-ranks
 * of scores). Two numbers are tested: the sum of the scores, and the sum of their squares. What they would be by chance is not
 * taken from a table but from the simulation: trial by trial, the simulated runs are laid beside the others as if the same
 * people had logged them, with the same rounding and the same moments of breaking off. So ties, censoring, and what runs
 * share (uncertain inputs) are in it. The two tests are corrected after Holm.
 *
 * @param meanScore mean score of the runs; above 0 if they are slower than simulated
 * @param slownessP chance that the runs would be as far off as they are, either way, if the model were right
 * @param spreadRatio sum of the squared scores over what it is on average; above 1 if extremes are too frequent
 * @param spreadP chance that it would be as far from its average, either way, if the model were right
 */
public record ModelCheck(double meanScore, double slownessP, double spreadRatio, double spreadP) {
    /** Chance that is accepted of finding fault with a model that is right. */
    public static final double ERROR_RATE = 0.05;

    /**
     * Checks runs.
     *
     * @param logged where each run lies
     * @param simulated for each run where each simulated one lies as if it had been logged; trials in the same order
     */
    static ModelCheck of(List<RankSpan> logged, List<List<RankSpan>> simulated) {
        int trials = simulated.get(0).size();
        double[] sums = new double[trials];
        double[] squares = new double[trials];
        for (List<RankSpan> ranks : simulated) {
            for (int trial = 0; trial < trials; trial++) {
                sums[trial] += ranks.get(trial).score();
                squares[trial] += ranks.get(trial).squareScore();
            }
        }
        double sum = logged.stream().mapToDouble(RankSpan::score).sum();
        double square = logged.stream().mapToDouble(RankSpan::squareScore).sum();
        return new ModelCheck(
                sum / logged.size(), twoSided(sum, sums), square / mean(squares), twoSided(square, squares));
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    /** The observed value counts as one of all: under a right model it is as likely as any to be the most extreme. */
    private static double twoSided(double observed, double[] simulated) {
        int above = 1;
        int below = 1;
        for (double value : simulated) {
            above += value >= observed - 1e-9 ? 1 : 0;
            below += value <= observed + 1e-9 ? 1 : 0;
        }
        return Math.min(1, 2.0 * Math.min(above, below) / (simulated.length + 1));
    }

    /** Returns whether the runs are slower than simulated, beyond chance. */
    public boolean isTooHopeful() {
        return rejects(0) && meanScore > 0;
    }

    /** Returns whether the runs are quicker than simulated, beyond chance. */
    public boolean isTooGloomy() {
        return rejects(0) && meanScore < 0;
    }

    /** Returns whether the runs lie at the extremes more often than they should, beyond chance. */
    public boolean isTooSure() {
        return rejects(1) && spreadRatio > 1;
    }

    /** Returns whether the runs lie in the middle more often than they should, beyond chance. */
    public boolean isTooUnsure() {
        return rejects(1) && spreadRatio < 1;
    }

    private boolean rejects(int test) {
        return HolmCorrection.rejects(new double[] {slownessP, spreadP}, ERROR_RATE)[test];
    }
}
