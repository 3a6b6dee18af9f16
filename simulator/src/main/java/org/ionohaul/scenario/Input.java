package org.ionohaul.scenario;

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
}
