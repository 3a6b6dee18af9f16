package org.ionohaul.scenario;

import org.ionohaul.limits.OutOfRange;

/**
 * A number of the scenario that may be uncertain, with the name under which its chance is drawn.
 *
 * @param key full name of its key
 * @param value the number or its distribution
 */
record Input(String key, Uncertain value) {
    /** Returns the number in one trial. */
    double in(Draws draws) {
        return value instanceof Uncertain.Known known ? known.value() : value.quantile(draws.probability(key));
    }

    /**
     * Returns the number as a ratio in dB that is never out of hand.
     *
     * @param component what it fills, by which a refusal finds its key
     * @throws OutOfRange if it can be beyond 100 dB either way
     */
    Described<Double> sane(String component) {
        Described<Double> checked = draws -> {
            double decibels = in(draws);
            OutOfRange.unless(Math.abs(decibels) <= 100, component, "must be within 100 dB", decibels);
            return decibels;
        };
        return checked.tried();
    }
}
