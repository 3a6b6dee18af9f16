package org.ionohaul.statistics;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Estimates of a function that is known to rise, put in rising order: chance can make neighbours change places, and sorting
 * values and interval ends, each by themselves, undoes it.
 *
 * <p>V. Chernozhukov, I. Fernandez-Val and A. Galichon, "Improving point and interval estimators of monotone functions by
 * rearrangement", Biometrika 96(3), 2009: whatever the estimates, their rearrangement lies at least as near the rising
 * truth, and rearranged interval ends cover all of it at least as often. A running maximum would hold the same order, but
 * carries each value that is too high by chance on to all larger arguments; isotonic regression takes means, which there
 * are none of where some values are infinite.
 */
public final class Rearranged {
    private Rearranged() {}

    /**
     * Returns the estimates in rising order.
     *
     * @param estimates one an argument, in rising order of arguments; infinite ones come last
     */
    public static List<Estimate> rising(List<Estimate> estimates) {
        double[] values = sorted(estimates, Estimate::value);
        double[] lows = sorted(estimates, Estimate::low);
        double[] highs = sorted(estimates, Estimate::high);
        return IntStream.range(0, values.length)
                .mapToObj(i -> new Estimate(values[i], lows[i], highs[i]))
                .toList();
    }

    /** Returns the estimates in falling order. */
    public static List<Estimate> falling(List<Estimate> estimates) {
        List<Estimate> rising = rising(estimates);
        return Stream.iterate(rising.size() - 1, i -> i - 1)
                .limit(rising.size())
                .map(rising::get)
                .toList();
    }

    private static double[] sorted(List<Estimate> estimates, ToDoubleFunction<Estimate> part) {
        return estimates.stream().mapToDouble(part).sorted().toArray();
    }
}
