package org.ionohaul.waveform;

import org.ionohaul.limits.OutOfRange;

/**
 * In what a real receiver differs from an ideal one.
 *
 * @param delayToleranceSeconds longest delay spread that the guard interval or equaliser absorbs, zero or more
 * @param trackingSeconds time between known symbols, by which the receiver follows the channel; the length of a symbol
 *     where tones are detected by energy; zero or more
 * @param gapDb how much more SNR it needs, in dB
 * @param ceilingDb its residual distortion on a path at rest: the SINR it sees never exceeds this many dB
 */
public record Receiver(double delayToleranceSeconds, double trackingSeconds, double gapDb, double ceilingDb) {
    /** Checks every value. */
    public Receiver {
        OutOfRange.unless(
                delayToleranceSeconds >= 0 && delayToleranceSeconds < 100,
                "delayToleranceSeconds",
                "must not be negative",
                delayToleranceSeconds);
        OutOfRange.unless(
                trackingSeconds >= 0 && trackingSeconds < 100,
                "trackingSeconds",
                "must not be negative",
                trackingSeconds);
        OutOfRange.unless(Math.abs(gapDb) < 100, "gapDb", "must be finite", gapDb);
        OutOfRange.unless(Math.abs(ceilingDb) < 1000, "ceilingDb", "must be finite", ceilingDb);
    }
}
