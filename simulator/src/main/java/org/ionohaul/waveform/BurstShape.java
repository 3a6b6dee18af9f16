package org.ionohaul.waveform;

import org.ionohaul.limits.OutOfRange;

/**
 * How a burst is put on the air: a preamble by which the receiver finds it, then frames.
 *
 * @param preambleSeconds length of the preamble, zero or more
 * @param detectionSnrDb SNR in 3 kHz at which the preamble is found in half of the cases on a steady path, in dB
 * @param frontEnd how the receiver keeps interference and impulses out, for preamble and frames
 * @param frame the frames that follow
 */
public record BurstShape(double preambleSeconds, double detectionSnrDb, FrontEnd frontEnd, FrameShape frame) {
    /** Checks the preamble. */
    public BurstShape {
        OutOfRange.unless(
                preambleSeconds >= 0 && preambleSeconds <= 3600,
                "preambleSeconds",
                "must be from 0 to 1 h",
                preambleSeconds);
        OutOfRange.unless(Math.abs(detectionSnrDb) < 200, "detectionSnrDb", "must be finite", detectionSnrDb);
    }

    /** Makes a burst for a plain receiver. */
    public BurstShape(double preambleSeconds, double detectionSnrDb, FrameShape frame) {
        this(preambleSeconds, detectionSnrDb, FrontEnd.PLAIN, frame);
    }
}
