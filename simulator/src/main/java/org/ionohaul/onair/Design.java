package org.ionohaul.onair;

/**
 * How a comparison on the air is made.
 *
 * @param size which of the file sizes, by its place
 * @param order in which order
 * @param runsEach how many runs of each mode, from 1 to 100
 */
public record Design(int size, RunOrder order, int runsEach) {
    /** Most runs of a mode: a comparison keeps its counts in bytes. */
    public static final int MOST_RUNS_EACH = 100;

    /** Checks the number of runs. */
    public Design {
        if (runsEach < 1 || runsEach > MOST_RUNS_EACH) {
            throw new IllegalArgumentException("runsEach must be from 1 to " + MOST_RUNS_EACH + ": " + runsEach);
        }
    }
}
