package org.ionohaul.learning;

import java.time.LocalDate;
import java.util.Optional;
import org.ionohaul.fieldlog.LoggedRun;

/**
 * Something that the log may tell.
 *
 * @param key the key of an uncertain input; if {@link #isGap}, the name of a mode
 * @param isGap whether it is by how much a mode falls short of its model
 * @param day the day that it belongs to; empty if it is the same on all days
 */
record Unknown(String key, boolean isGap, Optional<Day> day) {
    /**
     * The day of a run.
     *
     * @param date empty for all runs without a date
     */
    record Day(Optional<LocalDate> date) {
        static Day of(LoggedRun run) {
            return new Day(run.date());
        }
    }

    /** Returns whether it matters to a run. */
    boolean mattersTo(LoggedRun run) {
        return day.map(it -> it.equals(Day.of(run))).orElse(true) && (!isGap || key.equals(run.mode()));
    }
}
