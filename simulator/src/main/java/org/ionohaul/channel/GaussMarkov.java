package org.ionohaul.channel;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Slow variation on a grid of instants: x[k+1] = a x[k] + sd sqrt(1 - a^2) w[k] with a = exp(-step / time constant), from a stationary
 * start at point 0. Worked out in order and once. Values before point 0 come from a stream of their own, by the same rule backwards:
 * the process looks alike both ways.
 */
final class GaussMarkov {
    private final SlowVariation variation;
    private final double memory;
    private final double innovationDb;
    private final ZigguratSampler.NormalizedGaussian normal;
    private double lastDb;

    /**
     * Prepares the process.
     *
     * @param stepSeconds time between two points
     * @param chance its own stream
     */
    GaussMarkov(SlowVariation variation, double stepSeconds, UniformRandomProvider chance) {
        this.variation = variation;
        this.memory = Math.exp(-stepSeconds / variation.timeConstantSeconds());
        this.innovationDb = variation.deviationDb() * Math.sqrt(1 - memory * memory);
        this.normal = ZigguratSampler.NormalizedGaussian.of(chance);
        this.lastDb = variation.deviationDb() * normal.sample();
    }

    /** Returns the value at the next point, in dB; at first that of point 0. */
    double next() {
        double now = lastDb;
        lastDb = memory * lastDb + innovationDb * normal.sample();
        return now;
    }

    /** Returns values before point 0, the nearest first, in dB; call before any other. */
    double[] before(int count, UniformRandomProvider chance) {
        ZigguratSampler.NormalizedGaussian backwards = ZigguratSampler.NormalizedGaussian.of(chance);
        double[] values = new double[count];
        double nowDb = lastDb;
        for (int i = 0; i < count; i++) {
            nowDb = memory * nowDb + innovationDb * backwards.sample();
            values[i] = nowDb;
        }
        return values;
    }

    /** Returns the variance of what is left when the mean over {@code half} points either way and the point is taken out, in dB². */
    double varianceAboutMean(int half) {
        double variance = variation.deviationDb() * variation.deviationDb();
        double points = 2.0 * half + 1;
        double rest = 1 - memory;
        double withMean = (1 + 2 * memory * (1 - Math.pow(memory, half)) / rest) / points;
        double together = points * memory / rest - memory * (1 - Math.pow(memory, points)) / (rest * rest);
        double ofMean = (points + 2 * together) / (points * points);
        return Math.max(0, variance * (1 - 2 * withMean + ofMean));
    }

    /** Returns the variance of all of it, in dB². */
    double variance() {
        return variation.deviationDb() * variation.deviationDb();
    }

    /** Values from some point before 0 on, with their running sums, for means over stretches of points. */
    static final class Means {
        private final GaussMarkov process;
        private final int before;
        private double[] values;
        private double[] sums;
        private int known;

        /**
         * Prepares to look at a process that was not asked for anything yet.
         *
         * @param before how many points before 0 may be asked for
         */
        Means(GaussMarkov process, int before, UniformRandomProvider backwards) {
            this.process = process;
            this.before = before;
            this.values = new double[before + 64];
            this.sums = new double[before + 65];
            double[] earlier = process.before(before, backwards);
            for (int i = 0; i < before; i++) {
                append(earlier[before - 1 - i]);
            }
        }

        private void append(double value) {
            if (known == values.length) {
                values = Arrays.copyOf(values, 2 * known);
                sums = Arrays.copyOf(sums, 2 * known + 1);
            }
            values[known] = value;
            sums[known + 1] = sums[known] + value;
            known++;
        }

        /** Returns the value at a point. */
        double at(int point) {
            while (before + point >= known) {
                append(process.next());
            }
            return values[before + point];
        }

        /** Returns the mean over a point and so many either way. */
        double about(int point, int half) {
            at(point + half);
            int from = before + point - half;
            return (sums[from + 2 * half + 1] - sums[from]) / (2 * half + 1);
        }
    }
}
