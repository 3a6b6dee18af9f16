package org.ionohaul.waveform;

import org.ionohaul.channel.Passband;
import org.ionohaul.limits.OutOfRange;

/**
 * What a mode's signals have in common on the air.
 *
 * @param bandwidthHz occupied bandwidth, positive
 * @param crestFactorDb peak over mean power, in dB, zero or more: a transmitter limited by its peak power puts out so
 *     much less mean power
 */
public record Emission(double bandwidthHz, double crestFactorDb) {
    private static final double SUB_BAND_HZ = 300;
    private static final int MOST_SUB_BANDS = 8;

    /** Checks both values. */
    public Emission {
        OutOfRange.unless(bandwidthHz > 0 && bandwidthHz < 1e5, "bandwidthHz", "must be positive", bandwidthHz);
        OutOfRange.unless(
                crestFactorDb >= 0 && crestFactorDb < 30, "crestFactorDb", "must be from 0 to 30", crestFactorDb);
    }

    /**
     * Returns the passband through which this emission is to be heard: one sub-band for narrow signals, one for every 300
     * Hz of wider ones, at most eight; more where the paths' delays ask for it.
     */
    public Passband passband() {
        long subBands = Math.round(bandwidthHz / SUB_BAND_HZ);
        return new Passband(bandwidthHz, (int) Math.max(1, Math.min(MOST_SUB_BANDS, subBands)), true);
    }
}
