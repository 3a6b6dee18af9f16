package org.ionohaul.onair;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.apache.commons.statistics.descriptive.Median;
import org.apache.commons.statistics.inference.FisherExactTest;
import org.apache.commons.statistics.inference.MannWhitneyUTest;
import org.ionohaul.statistics.DiscordantPairs;
import org.ionohaul.statistics.PairedTimes;

/**
 * What makes one mode better than another: that its median run is through sooner or, given a deadline, that more of its runs
 * keep it. A run that never got through counts as longer than any other.
 *
 * @param deadlineSeconds the deadline, in seconds after pressing send; empty for the median time
 */
public record Criterion(OptionalDouble deadlineSeconds) {
    /** Returns the rounds that one of two modes won: was through first, or alone kept the deadline. */
    DiscordantPairs rounds(double[] first, double[] second) {
        PairedTimes times = PairedTimes.of(first, second);
        return deadlineSeconds.isPresent() ? times.deadlineKeptByOne(deadlineSeconds.getAsDouble()) : times.signs();
    }

    /** Returns what a bare comparison looks at: the median, in the middle of an even number, or the share that came too late. */
    double figure(double[] throughSeconds) {
        return deadlineSeconds.isPresent()
                ? (double) (throughSeconds.length - kept(throughSeconds)) / throughSeconds.length
                : Median.withDefaults().withCopy(true).evaluate(throughSeconds);
    }

    /**
     * Returns the two-sided p-value of a comparison that does not look at rounds: Mann and Whitney's rank test (Ann. Math.
     * Stat. 18, 1947) or, given a deadline, Fisher's exact test; 1 where nothing differs.
     */
    double unpairedPValue(double[] first, double[] second) {
        return deadlineSeconds.isPresent()
                ? fisher(kept(first), first.length, kept(second), second.length)
                : ranks(first, second);
    }

    private int kept(double[] throughSeconds) {
        double deadline = deadlineSeconds.orElseThrow();
        return (int) Arrays.stream(throughSeconds).filter(it -> it <= deadline).count();
    }

    private static double fisher(int first, int ofFirst, int second, int ofSecond) {
        int kept = first + second;
        return kept == 0 || kept == ofFirst + ofSecond
                ? 1
                : FisherExactTest.withDefaults()
                        .test(new int[][] {{first, ofFirst - first}, {second, ofSecond - second}})
                        .getPValue();
    }

    private static double ranks(double[] first, double[] second) {
        double p = MannWhitneyUTest.withDefaults().test(first, second).getPValue();
        return Double.isNaN(p) ? 1 : p;
    }
}
