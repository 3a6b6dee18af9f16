package org.ionohaul.scenario;

import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TruncatedNormalDistribution;
import org.ionohaul.channel.DecileDeviations;
import org.ionohaul.limits.OutOfRange;

/** A number of a scenario that may not be known exactly; drawn once a trial. */
public sealed interface Uncertain {
    /**
     * Returns the value below which the true one lies with the given probability.
     *
     * @param probability above 0, below 1
     */
    double quantile(double probability);

    /** Returns whether something is a number that is not exactly known. */
    static boolean isUncertain(Object value) {
        return value instanceof Uncertain && !(value instanceof Known);
    }

    /**
     * A known number.
     *
     * @param value the number
     */
    record Known(double value) implements Uncertain {
        @Override
        public double quantile(double probability) {
            return value;
        }
    }

    /**
     * A number known to within a normal error, written {@code "12 dB ± 3 dB"}; cut off at three standard deviations
     * either way, so that no trial meets an absurd value.
     *
     * @param mean the centre
     * @param deviation the standard deviation, positive
     */
    record Normal(double mean, double deviation) implements Uncertain {
        /** Checks the deviation. */
        public Normal {
            // Together with the mean, or the one is lost in the rounding of the other.
            OutOfRange.unless(
                    deviation > 0 && mean - deviation < mean && Double.isFinite(Math.abs(mean) + 6 * deviation),
                    "deviation",
                    "must be positive",
                    deviation);
        }

        @Override
        public double quantile(double probability) {
            return TruncatedNormalDistribution.of(mean, deviation, mean - 3 * deviation, mean + 3 * deviation)
                    .inverseCumulativeProbability(probability);
        }
    }

    /**
     * A number whose scatter about zero is told by its deciles; cut off at three standard deviations either way.
     *
     * @param deviations the deciles, in dB
     */
    record Deciles(DecileDeviations deviations) implements Uncertain {
        private static final double TAIL = NormalDistribution.of(0, 1).cumulativeProbability(-3);

        @Override
        public double quantile(double probability) {
            return deviations.overMedianDb(Math.min(Math.max(probability, TAIL), 1 - TAIL));
        }
    }

    /**
     * Anything in a range with equal chance, written {@code "9 dB .. 15 dB"}.
     *
     * @param low the lower end
     * @param high the upper end, above {@code low}
     */
    record Range(double low, double high) implements Uncertain {
        /** Checks that there is something between the ends. */
        public Range {
            OutOfRange.unless(
                    low < high && high - low < Double.POSITIVE_INFINITY,
                    "high",
                    "must be above low",
                    low + " .. " + high);
        }

        @Override
        public double quantile(double probability) {
            return low + probability * (high - low);
        }
    }

    /**
     * One of several values, each with a weight, written as a list of {@code {value = ..., weight = ...}}.
     *
     * @param values the values
     * @param weights their weights, positive; same length
     */
    record Weighted(List<Double> values, List<Double> weights) implements Uncertain {
        /** Copies both lists and checks the weights. */
        public Weighted {
            values = List.copyOf(values);
            weights = List.copyOf(weights);
            OutOfRange.unless(
                    !values.isEmpty() && values.size() == weights.size(), "weights", "must be one a value", weights);
            OutOfRange.unless(
                    weights.stream().allMatch(weight -> weight > 0 && weight < 1e9),
                    "weights",
                    "must be positive",
                    weights);
        }

        @Override
        public double quantile(double probability) {
            double left = probability
                    * weights.stream().mapToDouble(Double::doubleValue).sum();
            for (int i = 0; i < values.size() - 1; i++) {
                left -= weights.get(i);
                if (left < 0) {
                    return values.get(i);
                }
            }
            return values.get(values.size() - 1);
        }
    }
}
