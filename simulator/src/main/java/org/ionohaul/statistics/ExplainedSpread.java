package org.ionohaul.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.inference.OneWayAnova;
import org.apache.commons.statistics.ranking.NaturalRanking;
import org.apache.commons.statistics.ranking.TiesStrategy;

/**
 * How much of a sample's spread goes with one input that was drawn at random beside it.
 *
 * <p>Trials are sorted by the input and cut into groups of equal size; what the groups' means differ by, beyond what
 * chance would make them differ, is the input's doing (the correlation ratio, in the nearly unbiased form of T. L.
 * Kelley, Proc. Natl. Acad. Sci. 21, 1935: epsilon squared). It is the first-order sensitivity index of I. M. Sobol,
 * estimated from given trials, without running any more. Values are replaced by their ranks, so that those that never
 * came count as last and a long tail does not outweigh everything else.
 *
 * @param share share of the ranks' variance that goes with the input, from 0 to 1
 * @param pValue chance of a share at least as large if the input did not matter (F test)
 */
public record ExplainedSpread(double share, double pValue) {
    private static final int MOST_GROUPS = 20;
    private static final int TRIALS_A_GROUP = 10;

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
        if (Arrays.stream(values).distinct().count() == 1) {
            return new ExplainedSpread(0, 1);
        }
        List<double[]> groups = groups(input, new NaturalRanking(TiesStrategy.AVERAGE).apply(values));
        OneWayAnova.Result anova = OneWayAnova.withDefaults().test(groups);
        // Between groups F times what chance gives, so that 1 is no share at all; infinite without any spread in them.
        double f = Math.max(1, anova.getStatistic());
        double between = groups.size() - 1;
        double within = values.length - groups.size();
        return new ExplainedSpread(between * (1 - 1 / f) / (between + within / f), anova.getPValue());
    }

    private static List<double[]> groups(double[] input, double[] ranks) {
        int groups = Math.min(MOST_GROUPS, input.length / TRIALS_A_GROUP);
        int[] order = IntStream.range(0, input.length)
                .boxed()
                .sorted((a, b) -> Double.compare(input[a], input[b]))
                .mapToInt(it -> it)
                .toArray();
        return IntStream.range(0, groups)
                .mapToObj(group -> IntStream.range((int) ((long) input.length * group / groups), (int)
                                ((long) input.length * (group + 1) / groups))
                        .mapToDouble(i -> ranks[order[i]])
                        .toArray())
                .toList();
    }
}
