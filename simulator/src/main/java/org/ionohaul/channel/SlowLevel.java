package org.ionohaul.channel;

import java.util.Arrays;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;

/**
 * The slow variation of one trial: a Gauss-Markov process in dB, x[k+1] = a x[k] + sd sqrt(1 - a^2) w[k] with a =
 * exp(-step / time constant), drawn in order from a stationary start and kept, and joined by straight lines.
 *
 * <p>The step is 1/64 of the time constant; half-way between two points the standard deviation is 0.4 % below the
 * stationary one.
 */
final class SlowLevel {
    private static final double STEPS_PER_TIME_CONSTANT = 64;

    private final double pointsPerNano;
    private final double memory;
    private final double innovationDb;
    private final ZigguratSampler.NormalizedGaussian normal;
    private double[] levelsDb = new double[256];
    private int drawn;

    SlowLevel(SlowVariation variation, TrialStreams streams) {
        pointsPerNano = 1e-9 * STEPS_PER_TIME_CONSTANT / variation.timeConstantSeconds();
        memory = Math.exp(-1 / STEPS_PER_TIME_CONSTANT);
        innovationDb = variation.deviationDb() * Math.sqrt(1 - memory * memory);
        normal = ZigguratSampler.NormalizedGaussian.of(streams.open(Purpose.SLOW_VARIATION, 0));
        levelsDb[0] = variation.deviationDb() * normal.sample();
        drawn = 1;
    }

    /** Returns the departure from the median level at an instant, zero or later, in dB. */
    double levelDb(long atNanos) {
        double instant = atNanos * pointsPerNano;
        int point = (int) instant;
        if (point + 1 >= drawn) {
            drawUpTo(point + 1);
        }
        double share = instant - point;
        return levelsDb[point] + share * (levelsDb[point + 1] - levelsDb[point]);
    }

    private void drawUpTo(int point) {
        if (point >= levelsDb.length) {
            levelsDb = Arrays.copyOf(levelsDb, Math.max(point + 1, 2 * levelsDb.length));
        }
        for (; drawn <= point; drawn++) {
            levelsDb[drawn] = memory * levelsDb[drawn - 1] + innovationDb * normal.sample();
        }
    }
}
