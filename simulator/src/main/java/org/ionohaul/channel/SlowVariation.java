package org.ionohaul.channel;

import org.ionohaul.limits.OutOfRange;

/**
 * Slow variation of the path's median level: a Gauss-Markov process in dB, on top of the paths' fast fading.
 *
 * <p>Rifkin and Perry (Radio Science, 10.1029/94RS00834) measured over 2000 to 3000 km of mid latitudes a median standard
 * deviation of 2 to 3 dB and 37 to 57 s to decorrelate: 2.5 dB and 45 s are a fair default.
 *
 * <p>Beware of counting fading twice. The within-the-hour deciles of planning Recommendations (ITU-R P.842: about +5 and
 * -8 dB, from memory) already hold the Rayleigh fading, whose own deciles are +5.2 and -8.2 dB about its median: a
 * deviation taken from them must not be added to paths that fade. Use one or the other, or only what is left when the
 * fading is taken out.
 *
 * @param deviationDb stationary standard deviation in dB, zero or more (0 switches it off)
 * @param timeConstantSeconds lag at which the correlation has fallen to 1/e, 1 or more: below that it is
 *     not slow, and belongs to the paths' fading
 */
public record SlowVariation(double deviationDb, double timeConstantSeconds) {
    /** No slow variation. */
    public static final SlowVariation NONE = new SlowVariation(0, 1);

    /** Checks both values. */
    public SlowVariation {
        OutOfRange.unless(deviationDb >= 0 && deviationDb < 100, "deviationDb", "must be from 0 to 100", deviationDb);
        OutOfRange.unless(
                timeConstantSeconds >= 1 && timeConstantSeconds < 1e6,
                "timeConstantSeconds",
                "must be 1 to a million",
                timeConstantSeconds);
    }
}
