package org.ionohaul.channel;

import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.PoissonSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * The visits of one population of stations to one end in one trial, drawn in order of arrival.
 *
 * <p>The start is stationary: the number of visits under way when the trial begins is Poisson with the mean of an
 * infinite-server queue (arrival rate times mean length), and the age of each, like the time it has left, is exponential.
 * A visit begins with an over.
 */
final class Visits {
    private static final double NANOS = 1e9;

    private final Interference population;
    private final UniformRandomProvider chance;
    private final ZigguratSampler.Exponential exponential;
    private final ZigguratSampler.NormalizedGaussian normal;
    private int underWay;
    private double nextArrivalSeconds;

    /**
     * Prepares the visits.
     *
     * @param population what they are like; its rate must be positive
     * @param chance the population's own stream
     */
    Visits(Interference population, UniformRandomProvider chance) {
        this.population = population;
        this.chance = chance;
        this.exponential = ZigguratSampler.Exponential.of(chance);
        this.normal = ZigguratSampler.NormalizedGaussian.of(chance);
        double meanUnderWay = population.visitSeconds() / meanGapSeconds();
        this.underWay = PoissonSampler.of(chance, meanUnderWay).sample();
        this.nextArrivalSeconds = exponential(meanGapSeconds());
    }

    /** Appends the overs of all further visits that arrive before the given instant. */
    void arriveBefore(long atNanos, List<Over> overs) {
        for (; underWay > 0; underWay--) {
            double ageSeconds = exponential(population.visitSeconds());
            visit(-ageSeconds, exponential(population.visitSeconds()), overs);
        }
        while (nextArrivalSeconds * NANOS < atNanos) {
            visit(nextArrivalSeconds, nextArrivalSeconds + exponential(population.visitSeconds()), overs);
            nextArrivalSeconds += exponential(meanGapSeconds());
        }
    }

    private void visit(double fromSeconds, double toSeconds, List<Over> overs) {
        double power = Decibels.toRatio(population.medianDb() + population.deviationDb() * normal.sample());
        double widthHz = population.bandShare() * Reception.NOISE_BANDWIDTH_HZ;
        double lowHz =
                chance.nextDouble() * (Reception.NOISE_BANDWIDTH_HZ - widthHz) - Reception.NOISE_BANDWIDTH_HZ / 2;
        double overSeconds = fromSeconds;
        while (overSeconds < toSeconds) {
            double overEndSeconds = Math.min(toSeconds, overSeconds + exponential(population.overSeconds()));
            if (overEndSeconds > 0) {
                overs.add(new Over(nanos(overSeconds), nanos(overEndSeconds), power, lowHz, lowHz + widthHz));
            }
            overSeconds = overEndSeconds + exponential(population.pauseSeconds());
        }
    }

    private double meanGapSeconds() {
        return 3600 / population.visitsPerHour();
    }

    private double exponential(double mean) {
        return mean * exponential.sample();
    }

    private static long nanos(double seconds) {
        return Math.round(seconds * NANOS);
    }
}
