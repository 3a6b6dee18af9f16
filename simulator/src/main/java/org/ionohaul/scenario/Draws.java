package org.ionohaul.scenario;

/** Where the chance in uncertain inputs comes from: one number for each key of a trial. */
@FunctionalInterface
public interface Draws {
    /**
     * Returns the probability at which to read the input's distribution.
     *
     * @param key full name of the scenario key, such as {@code near.snr}
     * @return a number above 0 and below 1; the same for the same key
     */
    double probability(String key);
}
