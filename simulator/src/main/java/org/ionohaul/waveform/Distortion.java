package org.ionohaul.waveform;

import org.ionohaul.channel.Reception;

/**
 * What a real receiver adds to the noise, as a share of the signal's power: residual distortion of equaliser and channel
 * estimate, worse the faster the channel moves, and echoes later than the guard interval or equaliser reaches.
 *
 * @param residual share at rest, zero or more
 * @param delayToleranceSeconds longest delay spread that is absorbed, zero or more
 */
record Distortion(double residual, double delayToleranceSeconds) {
    /**
     * Doppler spread at which the residual distortion has doubled. The error of a channel estimate that is renewed at
     * fixed intervals grows with the square of the spread.
     */
    static final double DOUBLING_DOPPLER_HZ = 1.0;

    static Distortion of(FrameShape frame) {
        return new Distortion(Decibels.toRatio(-frame.ceilingDb()), frame.delayToleranceSeconds());
    }

    /** Returns the distortion's share of the signal's power on a given path. */
    double share(Reception reception) {
        double doppler = reception.dopplerSpreadHz() / DOUBLING_DOPPLER_HZ;
        return residual * (1 + doppler * doppler) + lateEchoes(reception.delaySpreadSeconds());
    }

    /**
     * Of two equal paths the later one is lost, and heard as noise, in proportion to how far it reaches beyond the
     * tolerance: an assumption of this model, right at both ends (all absorbed; as strong as the signal).
     */
    private double lateEchoes(double delaySpreadSeconds) {
        if (delaySpreadSeconds <= delayToleranceSeconds) {
            return 0;
        }
        double lost = 0.5 * (1 - delayToleranceSeconds / delaySpreadSeconds);
        return lost / (1 - lost);
    }
}
