package org.ionohaul.nextrun;

import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalLong;
import org.ionohaul.fieldlog.EndReadings;
import org.ionohaul.fieldlog.LoggedOutcome;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.fieldlog.NotedTime;
import org.ionohaul.fieldlog.Rounding;
import org.ionohaul.scenario.Direction;

/** Runs that were not made yet, as they will stand in a log. */
final class PlannedRun {
    /** How finely a time will be noted. */
    private static final double STEP_SECONDS = 10;

    private static final double LONGEST_SECONDS = 86_400;

    private PlannedRun() {}

    /**
     * Returns a run that is broken off if it is not through in some time; when it was through is noted.
     *
     * @param number its place in the log
     */
    static LoggedRun of(
            int number,
            String mode,
            Direction direction,
            long bytes,
            Optional<LocalTime> start,
            double patienceSeconds) {
        return new LoggedRun(
                number,
                Optional.empty(),
                start,
                mode,
                direction,
                bytes,
                OptionalLong.empty(),
                LoggedOutcome.BROKEN_OFF,
                OptionalLong.empty(),
                Optional.of(new NotedTime(Math.min(LONGEST_SECONDS, patienceSeconds), STEP_SECONDS, Rounding.NEAREST)),
                Optional.empty(),
                EndReadings.NONE,
                EndReadings.NONE,
                "");
    }

    /** Returns a run of any kind that is watched to its end. */
    static LoggedRun watched() {
        return of(1, "any", Direction.UPLOAD, 1, Optional.empty(), LONGEST_SECONDS);
    }
}
