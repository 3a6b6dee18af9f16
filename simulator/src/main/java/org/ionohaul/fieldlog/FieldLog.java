package org.ionohaul.fieldlog;

import java.util.List;

/**
 * Runs on the air, in the order of the log.
 *
 * @param name the file's name without its ending
 * @param runs the runs, at least one
 */
public record FieldLog(String name, List<LoggedRun> runs) {
    /** Copies the list and checks that there is a run. */
    public FieldLog {
        runs = List.copyOf(runs);
        if (runs.isEmpty()) {
            throw new IllegalArgumentException("runs must not be empty");
        }
    }
}
