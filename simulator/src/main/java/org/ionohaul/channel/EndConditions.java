package org.ionohaul.channel;

import java.util.List;
import org.ionohaul.limits.OutOfRange;

/**
 * What one end receives besides the fading.
 *
 * @param snrDb median signal-to-noise ratio in 3 kHz in dB, for a constant-envelope signal sent at the other end's full
 *     peak power, when the trial begins and before trend and schedules
 * @param noiseRiseDb rise of this end's noise floor over the clock, in dB
 * @param impulses impulsive noise at this end
 * @param interference other stations heard at this end, each entry an independent population
 */
public record EndConditions(
        double snrDb, Schedule noiseRiseDb, ImpulsiveNoise impulses, List<Interference> interference) {
    /** Over three a second: more is noise, and takes too long to draw. */
    private static final double MOST_OVERS_PER_HOUR = 12_000;

    private static final double MOST_PRESENT = 100;

    /** Copies the list and checks the level and the number of others. */
    public EndConditions {
        interference = List.copyOf(interference);
        double oversPerHour =
                interference.stream().mapToDouble(Interference::oversPerHour).sum();
        double present =
                interference.stream().mapToDouble(Interference::meanPresent).sum();
        OutOfRange.unless(
                oversPerHour <= MOST_OVERS_PER_HOUR,
                "interference",
                "must not come to more than 12,000 overs of other stations an hour",
                oversPerHour);
        OutOfRange.unless(
                present <= MOST_PRESENT,
                "interference",
                "must not come to more than 100 other stations at once on average",
                present);
        OutOfRange.unless(Math.abs(snrDb) < 200, "snrDb", "must be within 200 dB", snrDb);
    }

    /** Returns an end with nothing but a Gaussian floor at the given SNR in 3 kHz, in dB. */
    public static EndConditions quiet(double snrDb) {
        return new EndConditions(snrDb, Schedule.NONE, ImpulsiveNoise.NONE, List.of());
    }

    /** Returns these conditions for a trial that begins so many seconds later; may be negative. */
    EndConditions startingAfter(double seconds) {
        return new EndConditions(snrDb, noiseRiseDb.startingAfter(seconds), impulses, interference);
    }
}
