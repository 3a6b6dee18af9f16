package org.ionohaul.waveform;

/**
 * How a burst is put on the air: a preamble by which the receiver finds it, then frames.
 *
 * @param preambleSeconds length of the preamble, zero or more
 * @param detectionSnrDb SNR in 3 kHz at which the preamble is found in half of the cases on a steady path, in dB
 * @param frame the frames that follow
 */
public record BurstShape(double preambleSeconds, double detectionSnrDb, FrameShape frame) {
    /** Checks the preamble. */
    public BurstShape {
        if (!(preambleSeconds >= 0 && preambleSeconds < 1e4)) {
            throw new IllegalArgumentException("preambleSeconds must not be negative: " + preambleSeconds);
        }
        if (!(Math.abs(detectionSnrDb) < 200)) {
            throw new IllegalArgumentException("detectionSnrDb must be finite: " + detectionSnrDb);
        }
    }
}
