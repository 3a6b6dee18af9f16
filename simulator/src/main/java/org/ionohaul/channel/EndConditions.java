package org.ionohaul.channel;

import java.util.List;
import java.util.Optional;
import org.ionohaul.limits.OutOfRange;

/**
 * What one end receives besides the fading.
 *
 * @param snrDb median signal-to-noise ratio in 3 kHz in dB, for a constant-envelope signal sent at the other end's full
 *     peak power, when the trial begins and before trend and schedules
 * @param noiseRiseDb rise of this end's noise floor over the clock, in dB
 * @param impulses impulsive noise at this end
 * @param atmospherics how unevenly the floor comes, its mean power given
 * @param interference other stations heard at this end, each entry an independent population
 * @param gainControl what this end's receiver can hear at once
 * @param measured what was measured in place of the path's trend and slow variation, if anything
 */
public record EndConditions(
        double snrDb,
        Schedule noiseRiseDb,
        ImpulsiveNoise impulses,
        AtmosphericNoise atmospherics,
        List<Interference> interference,
        GainControl gainControl,
        Optional<MeasuredLevel> measured) {
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

    /** Makes an end whose floor is even and whose receiver hears the weakest beside the strongest. */
    public EndConditions(double snrDb, Schedule noiseRiseDb, ImpulsiveNoise impulses, List<Interference> interference) {
        this(snrDb, noiseRiseDb, impulses, AtmosphericNoise.NONE, interference, GainControl.NONE, Optional.empty());
    }

    /** Returns an end with nothing but a Gaussian floor at the given SNR in 3 kHz, in dB. */
    public static EndConditions quiet(double snrDb) {
        return new EndConditions(snrDb, Schedule.NONE, ImpulsiveNoise.NONE, List.of());
    }

    /** Returns these conditions for a trial that begins so many seconds later; may be negative. */
    EndConditions startingAfter(double seconds) {
        return new EndConditions(
                snrDb,
                noiseRiseDb.startingAfter(seconds),
                impulses,
                atmospherics,
                interference,
                gainControl,
                measured.map(it -> it.startingAfter(seconds)));
    }

    /** Returns these conditions with another SNR stated, in dB. */
    EndConditions withSnr(double otherSnrDb) {
        return new EndConditions(otherSnrDb, noiseRiseDb, impulses, atmospherics, interference, gainControl, measured);
    }
}
