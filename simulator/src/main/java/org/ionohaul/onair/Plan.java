package org.ionohaul.onair;

import org.ionohaul.statistics.Estimate;

/**
 * A way to find the better of two modes.
 *
 * @param size which of the file sizes is sent, by its place
 * @param order in which order runs are made
 * @param way how the better mode is told
 * @param runsEach how many runs of each mode it takes, at most
 * @param meanRunsEach how many it takes in the mean
 * @param right chance that the better mode is named
 * @param falseAlarm chance that either of two like modes is named
 * @param airSeconds how long all its sessions are together, in the mean
 * @param eveningSeconds how long its longest evening is, in the mean
 * @param evenings on how many evenings, at most
 * @param isWorkedOut whether it follows from the chances of a round, rounds being independent; else it was simulated as a whole
 */
public record Plan(
        int size,
        RunOrder order,
        Way way,
        int runsEach,
        double meanRunsEach,
        Estimate right,
        Estimate falseAlarm,
        double airSeconds,
        double eveningSeconds,
        int evenings,
        boolean isWorkedOut) {
    /** How the better mode is told. */
    public enum Way {
        /** By {@link Rule#PAIRED} after all runs. */
        PAIRED,
        /** By {@link Rule#UNPAIRED} after all runs. */
        UNPAIRED,
        /** As by {@link Stop#SAFE_LEAD}. */
        STOPPING
    }
}
