package org.ionohaul.fieldlog;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalLong;
import org.ionohaul.channel.End;
import org.ionohaul.scenario.Direction;

/**
 * One run on the air, as its operator wrote it down. What was not noted is empty.
 *
 * @param number its place in the log, from 1
 * @param date the day
 * @param start time of day when the operator pressed send
 * @param mode name of the mode's file, without its ending
 * @param direction which way the file went; the near end dials in either case
 * @param bytes size of the file, 1 or more
 * @param onAirBytes size after compression, as it went on the air
 * @param outcome what it came to
 * @param throughBytes of a run that was broken off or gave up, how many bytes were through by then
 * @param sessionTime from pressing send to the end of the session, dialling and hang-up counted
 * @param deliveredAfter from pressing send until the receiver held everything
 * @param near what was read at the station that dials
 * @param far what was read at the station that is called
 * @param remarks what else there is to say; may be empty
 */
public record LoggedRun(
        int number,
        Optional<LocalDate> date,
        Optional<LocalTime> start,
        String mode,
        Direction direction,
        long bytes,
        OptionalLong onAirBytes,
        LoggedOutcome outcome,
        OptionalLong throughBytes,
        Optional<NotedTime> sessionTime,
        Optional<NotedTime> deliveredAfter,
        EndReadings near,
        EndReadings far,
        String remarks) {
    /** Returns the bytes that went on the air: as noted, otherwise the file's size. */
    public long sentBytes() {
        return onAirBytes.orElse(bytes);
    }

    /** Returns what was read at an end. */
    public EndReadings at(End end) {
        return end == End.NEAR ? near : far;
    }
}
