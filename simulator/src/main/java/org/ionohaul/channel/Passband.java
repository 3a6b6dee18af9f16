package org.ionohaul.channel;

/**
 * The slice of spectrum that a waveform fills, cut into equal sub-bands; each is represented by its centre.
 *
 * @param widthHz occupied bandwidth in Hz, positive; centred on the middle of the receiver's 3 kHz
 * @param subBands how many sub-bands, 1 or more
 */
public record Passband(double widthHz, int subBands) {
    /** Checks width and count. */
    public Passband {
        if (!(widthHz > 0 && widthHz < 1e6)) {
            throw new IllegalArgumentException("widthHz must be positive and below 1 MHz: " + widthHz);
        }
        if (subBands < 1) {
            throw new IllegalArgumentException("subBands must be at least 1: " + subBands);
        }
    }

    /**
     * Returns the centre of a sub-band as an offset from the middle of the passband, in Hz.
     *
     * @param subBand from 0 to {@code subBands - 1}
     */
    public double centreHz(int subBand) {
        return widthHz * ((subBand + 0.5) / subBands - 0.5);
    }
}
