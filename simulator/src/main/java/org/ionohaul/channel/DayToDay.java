package org.ionohaul.channel;

/**
 * How an hour's median level of a sky wave differs from one day of a month to the next, by geomagnetic latitude and by how
 * near the frequency is to the highest that the path carries (the MUF). Decile deviations as ITU-R P.533 and P.842 tabulate
 * them, from memory: below 60 degrees +6 and -8 dB up to 0.8 of the MUF, +8 and -12 dB at the MUF; from 60 degrees on +9 and
 * -11 dB, +11 and -16 dB.
 *
 * <p>These are medians of whole hours, in which the fading within the hour is averaged out: they hold none of it, and come on
 * top of paths that fade. The deciles within the hour of the same Recommendations must not (see {@link SlowVariation}).
 */
public enum DayToDay implements Named {
    /** Geomagnetic latitude below 60 degrees, well below the MUF. */
    MID_LATITUDE(6, 8),
    /** Geomagnetic latitude below 60 degrees, near the MUF, as where a band opens or closes. */
    MID_LATITUDE_NEAR_MUF(8, 12),
    /** Geomagnetic latitude of 60 degrees or more, well below the MUF. */
    HIGH_LATITUDE(9, 11),
    /** Geomagnetic latitude of 60 degrees or more, near the MUF. */
    HIGH_LATITUDE_NEAR_MUF(11, 16);

    private final double upperDb;
    private final double lowerDb;

    DayToDay(double upperDb, double lowerDb) {
        this.upperDb = upperDb;
        this.lowerDb = lowerDb;
    }

    /** Returns how a day's level scatters about the month's median. */
    public DecileDeviations deviations() {
        return new DecileDeviations(upperDb, lowerDb);
    }
}
