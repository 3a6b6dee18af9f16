package org.ionohaul.placing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.ionohaul.channel.End;

/**
 * How numbers that were read at an end compare with those that the scenario states. All checks of a log are corrected together
 * (Bonferroni), so that a right model is blamed for any of them in at most 5 of 100 logs.
 *
 * @param end the end
 * @param what what was read there
 * @param readings how many runs there was a reading in
 * @param aboveStatedDb mean of what was read less the middle of what is stated, each weighed by how exactly it was read, in dB
 * @param lowDb lower end of its interval, in dB
 * @param highDb upper end
 * @param chance how often readings lie as far from the middle, either way, if the true level is one that the scenario holds for
 *     possible
 * @param errorRate chance that is accepted of finding fault with what is rightly stated
 */
public record EndCheck(
        End end,
        Gauge.What what,
        int readings,
        double aboveStatedDb,
        double lowDb,
        double highDb,
        double chance,
        double errorRate) {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    /**
     * Compares what was read during runs.
     *
     * @param gauges all that was read
     * @param trials in how many trials uncertain levels are looked up, positive
     */
    static List<EndCheck> of(RunBench bench, List<Gauge> gauges, int trials) {
        List<List<Gauge>> groups = new ArrayList<>();
        for (End end : End.values()) {
            Stream.of(Gauge.What.values())
                    .map(what -> gauges.stream()
                            .filter(it -> it.end() == end && it.what() == what)
                            .toList())
                    .filter(it -> !it.isEmpty())
                    .forEach(groups::add);
        }
        double errorRate = ModelCheck.ERROR_RATE / Math.max(1, groups.size());
        return groups.stream().map(it -> of(bench, it, trials, errorRate)).toList();
    }

    /** Readings are weighed by the inverse square of their errors; that of their mean is never less than their scatter shows. */
    private static EndCheck of(RunBench bench, List<Gauge> gauges, int trials, double errorRate) {
        double[] stated = gauges.stream()
                .mapToDouble(it -> bench.expected(it, RunBench.MIDDLE))
                .toArray();
        double[] weights = gauges.stream()
                .mapToDouble(it -> 1 / (it.deviationDb() * it.deviationDb()))
                .toArray();
        double weight = DoubleStream.of(weights).sum();
        double[] above = IntStream.range(0, stated.length)
                .mapToDouble(it -> gauges.get(it).value() - stated[it])
                .toArray();
        double mean = weighed(above, weights);
        double scatter = IntStream.range(0, above.length)
                        .mapToDouble(it -> weights[it] * (above[it] - mean) * (above[it] - mean))
                        .sum()
                / Math.max(1, above.length - 1);
        double deviation = Math.sqrt(Math.max(1, scatter) / weight);
        double reach = -NORMAL.inverseCumulativeProbability(errorRate / 2) * deviation;
        double below = IntStream.range(0, trials)
                .mapToDouble(trial -> weighed(
                        IntStream.range(0, stated.length)
                                .mapToDouble(it -> bench.expected(gauges.get(it), bench.draws(trial)) - stated[it])
                                .toArray(),
                        weights))
                .map(it -> NORMAL.cumulativeProbability((mean - it) / deviation))
                .average()
                .orElseThrow();
        Gauge first = gauges.get(0);
        return new EndCheck(
                first.end(),
                first.what(),
                gauges.size(),
                mean,
                mean - reach,
                mean + reach,
                2 * Math.min(below, 1 - below),
                errorRate);
    }

    private static double weighed(double[] values, double[] weights) {
        return IntStream.range(0, values.length)
                        .mapToDouble(it -> weights[it] * values[it])
                        .sum()
                / DoubleStream.of(weights).sum();
    }

    /** Returns whether what was read differs from the middle of what is stated, beyond the error of reading. */
    public boolean isBeyondChance() {
        return lowDb > 0 || highDb < 0;
    }

    /** Returns whether it differs from all that the scenario holds for possible. */
    public boolean isBeyondStated() {
        return chance < errorRate;
    }
}
