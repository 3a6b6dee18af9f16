package org.ionohaul.nextrun;

import org.apache.commons.rng.UniformRandomProvider;

/**
 * What a choice is worth now, and what it will be worth on average after an observation that was not made yet: preposterior analysis
 * (H. Raiffa and R. Schlaifer, "Applied Statistical Decision Theory", 1961, part 1), by nested Monte Carlo over draws of what is
 * believed. Draw after draw counts as the truth; an observation is made under it, the others are weighed by how likely it is
 * there, and what is then chosen is charged what it loses on average over those. A half of the draws chooses and the other is
 * charged, by turns, so that what looks best by chance is not taken for good.
 */
final class Preposterior {
    private final double[][] losses;
    private final boolean[] kept;

    /**
     * Prepares the analysis.
     *
     * @param losses what each choice loses under each draw, zero or more
     * @param kept which draws count
     */
    Preposterior(double[][] losses, boolean[] kept) {
        this.losses = losses;
        this.kept = kept;
    }

    /** Returns the choice that loses least as things are believed now. */
    int choice() {
        return best(all(new double[kept.length], kept.length, -1));
    }

    /** Returns what a choice loses on average as things are believed now. */
    double now() {
        return charged(new double[kept.length], -1);
    }

    private double charged(double[] logs, int truth) {
        double[] even = all(logs, 0, truth);
        double[] odd = all(logs, 1, truth);
        return (even[best(odd)] + odd[best(even)]) / 2;
    }

    /**
     * What an observation leaves.
     *
     * @param loss what is lost on average with what is then chosen
     * @param changedShare how often that is another choice than now, from 0 to 1
     */
    record After(double loss, double changedShare) {}

    /**
     * Returns what evidence leaves.
     *
     * @param truths how many draws count as the truth, those that are kept of the first
     * @param times how often it is observed, 1 or more
     */
    After after(Evidence evidence, int truths, int times, UniformRandomProvider random) {
        int choiceNow = choice();
        double loss = 0;
        int changed = 0;
        int tried = 0;
        for (int truth = 0; truth < truths; truth++) {
            double[] logs = new double[kept.length];
            for (int time = 0; time < times; time++) {
                evidence.observe(truth, time, random, logs);
            }
            if (kept[truth]) {
                loss += charged(logs, truth);
                changed += best(all(logs, kept.length, truth)) == choiceNow ? 0 : 1;
                tried++;
            }
        }
        return new After(loss / tried, (double) changed / tried);
    }

    private static int best(double[] losses) {
        int best = 0;
        for (int choice = 1; choice < losses.length; choice++) {
            best = losses[choice] < losses[best] ? choice : best;
        }
        return best;
    }

    /**
     * Returns the mean loss of each choice over draws that are weighed.
     *
     * @param half 0 for those with an even number, 1 for those with an odd one, else all
     * @param truth the draw that is left out, since it would know what it made itself
     */
    private double[] all(double[] logs, int half, int truth) {
        double most = Double.NEGATIVE_INFINITY;
        for (int draw = 0; draw < logs.length; draw++) {
            most = counts(draw, half, truth) ? Math.max(most, logs[draw]) : most;
        }
        double[] sums = new double[losses.length];
        double weights = 0;
        for (int draw = 0; draw < logs.length; draw++) {
            if (counts(draw, half, truth)) {
                double weight = Math.exp(logs[draw] - most);
                weights += weight;
                for (int choice = 0; choice < sums.length; choice++) {
                    sums[choice] += weight * losses[choice][draw];
                }
            }
        }
        for (int choice = 0; choice < sums.length; choice++) {
            sums[choice] /= weights;
        }
        return sums;
    }

    private boolean counts(int draw, int half, int truth) {
        return kept[draw] && draw != truth && (half > 1 || draw % 2 == half);
    }
}
