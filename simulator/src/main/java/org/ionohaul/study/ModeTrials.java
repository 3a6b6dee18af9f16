package org.ionohaul.study;

import java.util.List;
import java.util.OptionalLong;
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

    /** Returns when a trial's receiver held a file whole, from 0, in seconds, infinite if never. */
    public static double fileSeconds(TrialRow row, int file) {
        OptionalLong nanos = row.fileDeliveredNanos(file);
        return nanos.isPresent() ? nanos.getAsLong() / 1e9 : Double.POSITIVE_INFINITY;
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
