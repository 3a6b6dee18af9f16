package org.ionohaul.channel;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * A power level over one trial's clock: what the scenario schedules, and a slow variation about it. The slow variation
 * is a Gauss-Markov process in dB, x[k+1] = a x[k] + sd sqrt(1 - a^2) w[k] with a = exp(-step / time constant), from a
 * stationary start.
 *
 * <p>The level is worked out on a grid, in order and once, and its power joined by straight lines, so that asking costs
 * no exponential. The step is 1/64 of the time constant (half-way between two points the standard deviation is 0.4 %
 * below the stationary one); with a schedule it is never above 1 s, so that a scheduled jump takes that long at most. A
 * scheduled day so needs 0.7 MB.
 */
final class Level {
    private static final double STEPS_PER_TIME_CONSTANT = 64;
    private static final double LONGEST_SCHEDULED_SECONDS = 1;
    private static final double UNCHANGING_SECONDS = 1e6;
    private static final int AT_ONCE = 64;

    private final Schedule scheduleDb;
    private final double stepSeconds;
    private final double memory;
    private final double innovationDb;
    private final double pointsPerNano;
    private final ZigguratSampler.NormalizedGaussian normal;
    private double slowDb;
    private double[] ratios = new double[2];
    private int known;

    /**
     * Prepares a level.
     *
     * @param chance the slow variation's own stream
     */
    Level(Schedule scheduleDb, SlowVariation variation, UniformRandomProvider chance) {
        this.scheduleDb = scheduleDb;
        this.stepSeconds = stepSeconds(scheduleDb, variation);
        this.memory = Math.exp(-stepSeconds / variation.timeConstantSeconds());
        this.innovationDb = variation.deviationDb() * Math.sqrt(1 - memory * memory);
        this.pointsPerNano = 1e-9 / stepSeconds;
        this.normal = ZigguratSampler.NormalizedGaussian.of(chance);
        this.slowDb = variation.deviationDb() * normal.sample();
    }

    /** Returns the level at an instant, zero or later, as a power ratio. */
    double ratio(long atNanos) {
        double instant = atNanos * pointsPerNano;
        int point = (int) instant;
        if (point + 1 >= known) {
            learnUpTo(point + 1);
        }
        double share = instant - point;
        return ratios[point] + share * (ratios[point + 1] - ratios[point]);
    }

    private static double stepSeconds(Schedule scheduleDb, SlowVariation variation) {
        double longest = scheduleDb.points().isEmpty() ? UNCHANGING_SECONDS : LONGEST_SCHEDULED_SECONDS;
        return variation.deviationDb() > 0
                ? Math.min(longest, variation.timeConstantSeconds() / STEPS_PER_TIME_CONSTANT)
                : longest;
    }

    /** Learns a good many points at once: a loop that runs long is compiled well. */
    private void learnUpTo(int point) {
        int last = point | AT_ONCE - 1;
        if (last >= ratios.length) {
            ratios = Arrays.copyOf(ratios, Math.max(last + 1, 2 * ratios.length));
        }
        for (; known <= last; known++) {
            ratios[known] = Decibels.toRatio(scheduleDb.levelDb(known * stepSeconds) + slowDb);
            slowDb = memory * slowDb + innovationDb * normal.sample();
        }
    }
}
