package org.ionohaul.placing;

import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.statistics.OrderedSample;

/**
 * Where the quickest run of a log lies, or the one after it, and so on, if the model is right: the middle of its range of ranks in
 * 19 of 20 logs that the model makes, written down as the real one was. Ties, censoring and what runs share are in it, since
 * those logs are made of the same trials.
 *
 * @param low lower end, from 0 to 1
 * @param high upper end
 */
public record UsualPlace(double low, double high) {
    private static final double OUTSIDE = 0.05;

    /**
     * Returns the places of all runs, in order from the quickest for its kind to the slowest.
     *
     * @param simulated for each run where each simulated one lies as if it had been logged; trials in the same order
     */
    static List<UsualPlace> of(List<List<RankSpan>> simulated) {
        int runs = simulated.size();
        double[][] places = new double[runs][simulated.get(0).size()];
        for (int trial = 0; trial < places[0].length; trial++) {
            int its = trial;
            double[] rising = simulated.stream()
                    .mapToDouble(it -> it.get(its).middle())
                    .sorted()
                    .toArray();
            for (int place = 0; place < runs; place++) {
                places[place][trial] = rising[place];
            }
        }
        return IntStream.range(0, runs)
                .mapToObj(it -> OrderedSample.of(places[it]))
                .map(it -> new UsualPlace(it.quantile(OUTSIDE / 2), it.quantile(1 - OUTSIDE / 2)))
                .toList();
    }
}
