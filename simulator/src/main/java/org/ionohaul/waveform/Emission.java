package org.ionohaul.waveform;

/**
 * What a mode's signals have in common on the air.
 *
 * @param bandwidthHz occupied bandwidth, positive
 * @param crestFactorDb peak over mean power, in dB, zero or more: a transmitter limited by its peak power puts out so
 *     much less mean power
 */
public record Emission(double bandwidthHz, double crestFactorDb) {
    /** Checks both values. */
    public Emission {
        if (!(bandwidthHz > 0 && bandwidthHz < 1e5)) {
            throw new IllegalArgumentException("bandwidthHz must be positive: " + bandwidthHz);
        }
        if (!(crestFactorDb >= 0 && crestFactorDb < 30)) {
            throw new IllegalArgumentException("crestFactorDb must be from 0 to 30: " + crestFactorDb);
        }
    }
}
