package org.ionohaul.study;

import java.util.List;
import org.ionohaul.scenario.Mode;

/**
 * All trials of one mode in one case.
 *
 * @param mode the mode
 * @param rows its trials, in order of trial number; unmodifiable, perhaps a view of far more than should be copied
 */
public record ModeTrials(Mode mode, List<TrialRow> rows) {
    /** Returns each trial's completion time in seconds, infinite if it never came, in order of trial number. */
    public double[] completionSeconds() {
        return rows.stream().mapToDouble(TrialRow::deliveredSeconds).toArray();
    }

    /**
     * Returns when each trial's receiver held a file whole, in seconds, infinite if never, in order of trial number.
     *
     * @param file its place in the transfer, from 0
     */
    public double[] fileSeconds(int file) {
        return rows.stream()
                .map(row -> row.fileDeliveredNanos(file))
                .mapToDouble(it -> it.isPresent() ? it.getAsLong() / 1e9 : Double.POSITIVE_INFINITY)
                .toArray();
    }

    /**
     * Returns when each trial's receiver first held so many bytes, in seconds, infinite if never, in order of trial
     * number.
     *
     * @param sizeIndex index of the size in {@link SizeGrid#BYTES}
     */
    public double[] reachedSeconds(int sizeIndex) {
        return rows.stream().mapToDouble(row -> row.reachedSeconds(sizeIndex)).toArray();
    }
}
