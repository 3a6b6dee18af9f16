package org.ionohaul.channel;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * A power level over one trial's clock: what the scenario schedules, or what was measured, and a slow variation about it, a {@link
 * GaussMarkov} process in dB.
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

    private final Grid grid;
    private final double pointsPerNano;
    private double[] ratios = new double[2];
    private int known;

    /** A level at the points of a grid, asked for in order and once each. */
    interface Grid {
        /** Returns the time between two points, in seconds. */
        double stepSeconds();

        /** Returns the level at a point, counted from 0 when the trial begins, in dB. */
        double levelDb(int point);
    }

    /** Joins the points of a grid. */
    Level(Grid grid) {
        this.grid = grid;
        this.pointsPerNano = 1e-9 / grid.stepSeconds();
    }

    /**
     * Prepares a level.
     *
     * @param chance the slow variation's own stream
     */
    Level(Schedule scheduleDb, SlowVariation variation, UniformRandomProvider chance) {
        this(stated(scheduleDb, variation, stepSeconds(!scheduleDb.points().isEmpty(), variation), chance));
    }

    /** Returns the grid of a schedule and a slow variation about it. */
    static Grid stated(Schedule scheduleDb, SlowVariation variation, double stepSeconds, UniformRandomProvider chance) {
        GaussMarkov slow = new GaussMarkov(variation, stepSeconds, chance);
        return new Grid() {
            @Override
            public double stepSeconds() {
                return stepSeconds;
            }

            @Override
            public double levelDb(int point) {
                return scheduleDb.levelDb(point * stepSeconds) + slow.next();
            }
        };
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

    /**
     * Returns the step of a grid, in seconds.
     *
     * @param isScheduled whether the level changes by a schedule, or as it was measured
     */
    static double stepSeconds(boolean isScheduled, SlowVariation variation) {
        double longest = isScheduled ? LONGEST_SCHEDULED_SECONDS : UNCHANGING_SECONDS;
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
            ratios[known] = Decibels.toRatio(grid.levelDb(known));
        }
    }
}
