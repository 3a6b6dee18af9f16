package org.ionohaul.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.FDistribution;

/**
 * How much of a sample's spread goes with one input that was drawn at random beside it.
 *
 * <p>Trials are sorted by the input and cut into groups of equal size; what the groups' means differ by, beyond what
 * chance would make them differ, is the input's doing (the correlation ratio, in the nearly unbiased form of T. L.
 * Kelley, Proc. Natl. Acad. Sci. 21, 1935: epsilon squared). It is the first-order sensitivity index of I. M. Sobol,
 * estimated from given trials, without running any more. Values are replaced by their ranks, so that those that never
 * came count as last and a long tail does not outweigh everything else; of values that are only 0 or 1 ranks change nothing.
 *
 * @param share share of the ranks' variance that goes with the input, up to 1; below 0 where chance makes the groups more
 *     alike than they should be, so that its mean is right
 * @param pValue chance of a share at least as large if the input did not matter (F test)
 */
public record ExplainedSpread(Jackknifed share, double pValue) {
    private static final int MOST_GROUPS = 20;
    private static final int TRIALS_A_GROUP = 10;
    private static final int NO_BLOCK = -1;

    /** The fewest trials that can be split. */
    public static final int FEWEST_TRIALS = 2 * TRIALS_A_GROUP;

    /**
     * Returns how much of the values' spread goes with an input.
     *
     * @param input the input's value, or any rising function of it, a trial
     * @param values what came of it, infinite if it never came; same length, at least {@link #FEWEST_TRIALS}
     */
    public static ExplainedSpread of(double[] input, double[] values) {
        if (input.length != values.length || input.length < FEWEST_TRIALS) {
            throw new IllegalArgumentException(
                    "not enough pairs to split: " + input.length + " and " + values.length + " values");
        }
        Sorted sorted = new Sorted(input, values);
        int groups = Math.min(MOST_GROUPS, input.length / TRIALS_A_GROUP);
        Variances all = sorted.without(NO_BLOCK, groups);
        return new ExplainedSpread(
                Jackknifed.of(
                        all.share(), block -> sorted.without(block, groups).share()),
                all.pValue());
    }

    private static int[] rising(double[] values) {
        return IntStream.range(0, values.length)
                .boxed()
                .sorted((a, b) -> Double.compare(values[a], values[b]))
                .mapToInt(it -> it)
                .toArray();
    }

    /** The trials in order of input and in order of value, so that leaving some out needs no sorting. */
    private static final class Sorted {
        private final int[] byInput;
        private final int[] byValue;
        private final double[] values;

        Sorted(double[] input, double[] values) {
            this.byInput = rising(input);
            this.byValue = rising(values);
            this.values = values;
        }

        /** Returns the variances without the trials of a block: every so many from its number on. */
        Variances without(int block, int groups) {
            double[] ranks = ranks(block);
            int[] order = Arrays.stream(byInput).filter(it -> isIn(it, block)).toArray();
            double within = 0;
            double between = 0;
            double mean = (order.length + 1) / 2.0;
            for (int group = 0; group < groups; group++) {
                int from = (int) ((long) order.length * group / groups);
                int to = (int) ((long) order.length * (group + 1) / groups);
                double groupMean = Arrays.stream(order, from, to)
                        .mapToDouble(it -> ranks[it])
                        .average()
                        .orElseThrow();
                between += (to - from) * (groupMean - mean) * (groupMean - mean);
                within += Arrays.stream(order, from, to)
                        .mapToDouble(it -> (ranks[it] - groupMean) * (ranks[it] - groupMean))
                        .sum();
            }
            return new Variances(between, within, groups - 1.0, order.length - (double) groups);
        }

        /** Ranks from 1; values that are alike share their mean rank. */
        private double[] ranks(int block) {
            double[] ranks = new double[values.length];
            int[] order = Arrays.stream(byValue).filter(it -> isIn(it, block)).toArray();
            for (int from = 0; from < order.length; ) {
                int to = from + 1;
                while (to < order.length && values[order[to]] == values[order[from]]) {
                    to++;
                }
                for (int i = from; i < to; i++) {
                    ranks[order[i]] = (from + 1 + to) / 2.0;
                }
                from = to;
            }
            return ranks;
        }

        private static boolean isIn(int trial, int block) {
            return trial % Jackknifed.BLOCKS != block;
        }
    }

    /** Sums of squares between groups and within them, with their degrees of freedom. */
    private record Variances(double between, double within, double betweenFreedom, double withinFreedom) {
        double share() {
            double all = between + within;
            return all == 0 ? 0 : (between - betweenFreedom * within / withinFreedom) / all;
        }

        double pValue() {
            return between + within == 0
                    ? 1
                    : FDistribution.of(betweenFreedom, withinFreedom)
                            .survivalProbability(between / betweenFreedom / (within / withinFreedom));
        }
    }
}
