package org.ionohaul.learning;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** Standard normal scores and the probabilities that they stand for. */
public final class Scores {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final double LEAST = 1e-12;

    private Scores() {}

    /** Returns the probability of a score, kept above 0 and below 1. */
    public static double probability(double score) {
        return Math.max(LEAST, Math.min(1 - LEAST, NORMAL.cumulativeProbability(score)));
    }

    /** Returns the score of a probability, infinite at 0 and 1. */
    public static double ofProbability(double probability) {
        return NORMAL.inverseCumulativeProbability(Math.max(0, Math.min(1, probability)));
    }
}
