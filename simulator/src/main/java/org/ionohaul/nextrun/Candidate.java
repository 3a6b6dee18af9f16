package org.ionohaul.nextrun;

import java.time.LocalTime;
import java.util.Optional;
import org.ionohaul.channel.End;
import org.ionohaul.placing.Gauge;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;

/** Something that may be done on the air next. */
public sealed interface Candidate {
    /**
     * Sending a file.
     *
     * @param mode with which mode
     * @param direction which way
     * @param bytes how much, as it goes on the air
     * @param start time of day when send is pressed; empty for the scenario's clock
     */
    record Send(Mode mode, Direction direction, long bytes, Optional<LocalTime> start) implements Candidate {}

    /**
     * Reading a meter, averaged over many fades: the SNR or the signal while the other end sends a carrier, the noise while nobody
     * sends.
     *
     * @param end where
     * @param what what it shows
     * @param seconds how long that takes
     * @param deviationDb standard deviation of the meter's error, in dB, positive
     */
    record Listen(End end, Gauge.What what, double seconds, double deviationDb) implements Candidate {}
}
