package org.ionohaul.statistics;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * The log-rank test of whether two groups have the same survival curve (N. Mantel, Cancer Chemother. Rep. 50, 1966).
 *
 * @param observed events seen in the first group
 * @param expected events expected in it if both groups were alike
 * @param variance variance of {@code observed} if both groups were alike (hypergeometric, so ties are exact)
 */
public record LogRankTest(int observed, double expected, double variance) {
    /** Returns the test of a first group against a second. */
    public static LogRankTest of(List<Observation> first, List<Observation> second) {
        double[] eventTimes = Stream.concat(first.stream(), second.stream())
                .filter(Observation::isEvent)
                .mapToDouble(Observation::time)
                .distinct()
                .toArray();
        int observed = (int) first.stream().filter(Observation::isEvent).count();
        double expected = DoubleStream.of(eventTimes)
                .map(time -> At.of(time, first, second).expected())
                .sum();
        double variance = DoubleStream.of(eventTimes)
                .map(time -> At.of(time, first, second).variance())
                .sum();
        return new LogRankTest(observed, expected, variance);
    }

    /** Returns the test statistic, chi-squared with one degree of freedom if both groups are alike. */
    public double chiSquared() {
        return z() * z();
    }

    /** Returns the test statistic, standard normal if both groups are alike; negative if the first has fewer events. */
    public double z() {
        return (observed - expected) / Math.sqrt(variance);
    }

    /** Returns the chance of a difference at least as large if both groups were alike (two-sided). */
    public double pValue() {
        return ChiSquaredDistribution.of(1).survivalProbability(chiSquared());
    }

    /** What an instant of events adds: those at risk in the first group and in both, and the events in both. */
    private record At(double firstAtRisk, double atRisk, double events) {
        static At of(double time, List<Observation> first, List<Observation> second) {
            double firstAtRisk = atRisk(time, first);
            return new At(firstAtRisk, firstAtRisk + atRisk(time, second), events(time, first) + events(time, second));
        }

        double expected() {
            return events * firstAtRisk / atRisk;
        }

        double variance() {
            double share = firstAtRisk / atRisk;
            return atRisk > 1 ? events * share * (1 - share) * (atRisk - events) / (atRisk - 1) : 0;
        }

        private static double atRisk(double time, List<Observation> group) {
            return group.stream().filter(it -> it.time() >= time).count();
        }

        private static double events(double time, List<Observation> group) {
            return group.stream()
                    .filter(it -> it.isEvent() && it.time() == time)
                    .count();
        }
    }
}
