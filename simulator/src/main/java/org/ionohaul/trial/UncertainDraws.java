package org.ionohaul.trial;

import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.Draws;

/**
 * Draws a trial's uncertain inputs, each from a stream of its own, so that one input more shifts no other.
 *
 * @param streams the trial's streams
 */
public record UncertainDraws(TrialStreams streams) implements Draws {
    /** Half a step of the generator's 53-bit grid: keeps the probability off zero. */
    private static final double HALF_STEP = 0x1.0p-54;

    /** Returns the draws of one trial, zero or more, under a study's seed. */
    public static UncertainDraws of(long seed, long trial) {
        return new UncertainDraws(new TrialStreams(seed, trial));
    }

    @Override
    public double probability(String key) {
        return streams.open(Purpose.UNCERTAIN_INPUT, StreamElement.of(key)).nextDouble() + HALF_STEP;
    }
}
