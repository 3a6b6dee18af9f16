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
 * @param frequencyToleranceHz by how much the sender's frequency may lie off before anything is lost, since the receiver finds
 *     and follows it by itself; zero or more
 * @param equaliser how it undoes echoes in symbols that fill the band
 */
public record Receiver(
        double delayToleranceSeconds,
        double trackingSeconds,
        double gapDb,
        double ceilingDb,
        double frequencyToleranceHz,
        Equaliser equaliser) {
    /** What MIL-STD-188-110 asks of a serial-tone receiver (75 Hz, with 3.5 Hz a second of drift; from memory). */
    public static final double USUAL_TOLERANCE_HZ = 75;

    /** Makes a receiver that takes the usual difference of frequencies and whose equaliser is not known. */
    public Receiver(double delayToleranceSeconds, double trackingSeconds, double gapDb, double ceilingDb) {
        this(delayToleranceSeconds, trackingSeconds, gapDb, ceilingDb, USUAL_TOLERANCE_HZ, Equaliser.BY_PARTS);
    }

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
        OutOfRange.unless(
                frequencyToleranceHz >= 0 && frequencyToleranceHz <= 10_000,
                "frequencyToleranceHz",
                "must be from 0 to 10 kHz",
                frequencyToleranceHz);
    }
}
