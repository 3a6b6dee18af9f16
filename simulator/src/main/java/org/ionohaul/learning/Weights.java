package org.ionohaul.learning;

import java.util.Arrays;

/** Weights of draws, from their logarithms. */
final class Weights {
    private Weights() {}

    /** Returns weights that sum to 1. */
    static double[] ofLogs(double[] logs) {
        double most = Arrays.stream(logs).max().orElseThrow();
        double[] weights = Arrays.stream(logs).map(it -> Math.exp(it - most)).toArray();
        double sum = Arrays.stream(weights).sum();
        return Arrays.stream(weights).map(it -> it / sum).toArray();
    }

    /** Returns the logarithm of the mean of numbers that are given by their logarithms. */
    static double logMean(double[] logs) {
        double most = Arrays.stream(logs).max().orElseThrow();
        return most
                + Math.log(Arrays.stream(logs)
                        .map(it -> Math.exp(it - most))
                        .average()
                        .orElseThrow());
    }

    /** Returns how many equal ones weights are worth (Kish): the square of their sum over the sum of their squares. */
    static double effective(double[] weights) {
        double sum = Arrays.stream(weights).sum();
        return sum * sum / Arrays.stream(weights).map(it -> it * it).sum();
    }
}
