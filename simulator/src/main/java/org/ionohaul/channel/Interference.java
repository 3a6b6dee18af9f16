package org.ionohaul.channel;

import org.ionohaul.limits.OutOfRange;

/**
 * Other stations heard at one end: visits that arrive as a Poisson process, each a run of overs with pauses between.
 * Powers of simultaneous stations add (their medians must not be added). A visit begins with an over; a visitor keeps its
 * level and its place in the band, and does not fade.
 *
 * @param visitsPerHour mean arrivals an hour, zero (none) or more
 * @param visitSeconds mean length of a visit (exponential), positive
 * @param overSeconds mean length of an over (exponential), positive
 * @param pauseSeconds mean pause between overs (exponential), positive
 * @param medianDb median level of a visitor while it talks, over the end's noise floor in 3 kHz when the trial begins,
 *     in dB
 * @param deviationDb standard deviation of that level from visitor to visitor, in dB (log-normal), zero or more
 * @param bandShare share of the 3 kHz that a visitor covers, from above 0 to 1; where it lies is drawn a visit
 */
public record Interference(
        double visitsPerHour,
        double visitSeconds,
        double overSeconds,
        double pauseSeconds,
        double medianDb,
        double deviationDb,
        double bandShare) {
    /** Nobody else on the frequency. */
    public static final Interference NONE = new Interference(0, 1, 1, 1, 0, 0, 1);

    /** Checks every value. */
    public Interference {
        OutOfRange.unless(
                visitsPerHour >= 0 && visitsPerHour < 1e4, "visitsPerHour", "must be from 0 to 10000", visitsPerHour);
        requirePositive("visitSeconds", visitSeconds);
        requirePositive("overSeconds", overSeconds);
        requirePositive("pauseSeconds", pauseSeconds);
        OutOfRange.unless(Math.abs(medianDb) < 200, "medianDb", "must be within 200 dB", medianDb);
        OutOfRange.unless(deviationDb >= 0 && deviationDb < 100, "deviationDb", "must be from 0 to 100", deviationDb);
        OutOfRange.unless(bandShare > 0 && bandShare <= 1, "bandShare", "must be above 0 and at most 1", bandShare);
    }

    /** Returns the same stations, heard by so many dB more strongly. */
    public Interference raised(double decibels) {
        return new Interference(
                visitsPerHour, visitSeconds, overSeconds, pauseSeconds, medianDb + decibels, deviationDb, bandShare);
    }

    /** Returns how many visitors are there at once, on average. */
    double meanPresent() {
        return visitsPerHour * visitSeconds / 3600;
    }

    /** Returns how many overs begin an hour, on average; every visit has at least one. */
    double oversPerHour() {
        return visitsPerHour * (1 + visitSeconds / (overSeconds + pauseSeconds));
    }

    private static void requirePositive(String name, double seconds) {
        OutOfRange.unless(seconds > 0 && seconds < 1e7, name, "must be positive", seconds);
    }
}
