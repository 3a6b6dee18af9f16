package org.ionohaul.onair;

import java.util.List;
import java.util.function.LongFunction;
import org.apache.commons.rng.UniformRandomProvider;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;

/**
 * Evenings without any sky: runs are independent and last as chance has it (exponential), each mode in its own mean.
 *
 * @param meanSeconds for each mode, its mean time
 * @param failing share of the runs, of either mode, that never get through
 */
record MadeUpEvenings(List<Double> meanSeconds, double failing) implements LongFunction<Evening> {
    private static final long SEED = 8;

    @Override
    public Evening apply(long trial) {
        return (mode, repeat, startNanos) -> {
            UniformRandomProvider chance = new TrialStreams(SEED, trial).open(Purpose.DECODING, mode, repeat);
            double seconds = -meanSeconds.get(mode) * Math.log(1 - chance.nextDouble());
            return new Run(
                    chance.nextDouble() < failing ? Double.POSITIVE_INFINITY : seconds, Math.round(1e9 * seconds));
        };
    }

    /** Returns how often the first of two modes is sooner than the second: rates compete. */
    double firstSooner() {
        return meanSeconds.get(1) / (meanSeconds.get(0) + meanSeconds.get(1));
    }
}
