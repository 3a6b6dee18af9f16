package org.ionohaul.channel;

import org.ionohaul.limits.OutOfRange;

/**
 * Categories of external noise of ITU-R P.372: median noise figure F_am = c - d log10(f / MHz) in dB above kT0b, with
 * its upper and lower decile deviations over time. Constants as P.372-16 gives them; man-made noise from its table of
 * c, d and deciles, galactic noise from its equation 13 (which holds above the critical frequency of the F2 layer).
 */
public enum NoiseEnvironment implements Named {
    /** Business areas of a city. */
    CITY(76.8, 27.7, 11.0, 6.7),
    /** Residential areas. */
    RESIDENTIAL(72.5, 27.7, 10.6, 5.3),
    /** Countryside with houses. */
    RURAL(67.2, 27.7, 9.2, 4.6),
    /** Countryside far from mains and machines. */
    QUIET_RURAL(53.6, 28.6, 9.2, 4.6),
    /** Noise of the galaxy alone. */
    GALACTIC(52.0, 23.0, 2.0, 2.0);

    /** Noise power density kT0 at 290 K, in dBm in 1 Hz, rounded as P.372 rounds it (-204 dBW). */
    private static final double THERMAL_DBM = -174;

    private final double c;
    private final double d;
    private final double upperDecileDb;
    private final double lowerDecileDb;

    NoiseEnvironment(double c, double d, double upperDecileDb, double lowerDecileDb) {
        this.c = c;
        this.d = d;
        this.upperDecileDb = upperDecileDb;
        this.lowerDecileDb = lowerDecileDb;
    }

    /**
     * Returns the median noise figure F_am, in dB above kT0b.
     *
     * @param frequencyHz from 300 kHz to 250 MHz, where the Recommendation's formula holds
     */
    public double medianFigureDb(double frequencyHz) {
        OutOfRange.unless(
                frequencyHz >= 0.3e6 && frequencyHz <= 250e6,
                "frequencyHz",
                "must be from 0.3 MHz to 250 MHz",
                frequencyHz);
        return c - d * Math.log10(frequencyHz / 1e6);
    }

    /** Returns the median noise power in 3 kHz, in dBm, of an antenna without losses. */
    public double medianDbm(double frequencyHz) {
        return THERMAL_DBM + medianFigureDb(frequencyHz) + Decibels.ofRatio(Reception.NOISE_BANDWIDTH_HZ);
    }

    /**
     * Returns by how much the noise lies over its median at a moment, in dB.
     *
     * @param probability chance that the noise is below the result, above 0 and below 1
     */
    public double overMedianDb(double probability) {
        return new DecileDeviations(upperDecileDb, lowerDecileDb).overMedianDb(probability);
    }
}
