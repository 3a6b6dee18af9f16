package org.ionohaul.fieldlog;

import org.ionohaul.limits.OutOfRange;

/**
 * A level or ratio that somebody read off during a run.
 *
 * @param value what was read: dB for an SNR in 3 kHz, dBm for a signal or a noise
 * @param how how it was read
 * @param accuracyDb standard deviation of the meter's own error, in dB, zero or more
 */
public record Reading(double value, HowRead how, double accuracyDb) {
    /** Standard deviation of a meter of which nothing more is known, in dB: half an S-unit. Common practice, no source. */
    public static final double USUAL_ACCURACY_DB = 3;

    /** Checks both numbers. */
    public Reading {
        OutOfRange.unless(Math.abs(value) < 200, "value", "must be within 200 dB", value);
        OutOfRange.unless(accuracyDb >= 0 && accuracyDb <= 30, "accuracyDb", "must be from 0 to 30 dB", accuracyDb);
    }

    /** Returns what the mean power must have been, as far as this tells, in the unit of {@link #value}. */
    public double mean() {
        return value - how.biasDb();
    }

    /** Returns the standard deviation of {@link #mean}, in dB. */
    public double deviationDb() {
        return Math.hypot(how.deviationDb(), accuracyDb);
    }
}
