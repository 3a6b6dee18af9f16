package org.ionohaul.statistics;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Which of several tests may be believed when all of them were made: the step-down correction of S. Holm, "A simple
 * sequentially rejective multiple test procedure", Scand. J. Stat. 6, 1979. It holds however the tests depend on each
 * other, and is never weaker than Bonferroni's.
 */
public final class HolmCorrection {
    private HolmCorrection() {}

    /**
     * Returns which tests reject.
     *
     * @param pValues a p-value a test
     * @param errorRate chance that is accepted that any test rejects wrongly, above 0, below 1
     */
    public static boolean[] rejects(double[] pValues, double errorRate) {
        if (!(errorRate > 0 && errorRate < 1)) {
            throw new IllegalArgumentException("errorRate must lie above 0 and below 1: " + errorRate);
        }
        int[] rising = IntStream.range(0, pValues.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> pValues[i]))
                .mapToInt(i -> i)
                .toArray();
        boolean[] rejects = new boolean[pValues.length];
        for (int done = 0;
                done < rising.length && pValues[rising[done]] <= errorRate / (rising.length - done);
                done++) {
            rejects[rising[done]] = true;
        }
        return rejects;
    }
}
