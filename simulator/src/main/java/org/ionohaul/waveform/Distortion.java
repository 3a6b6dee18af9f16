package org.ionohaul.waveform;

import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.Reception;

/**
 * What a real receiver adds to the noise, as a share of the signal's power: residual distortion, an estimate of the
 * channel that is out of date, and echoes later than the guard interval or equaliser reaches.
 *
 * @param receiver the receiver's traits
 * @param symbolSeconds length of a symbol, positive
 */
record Distortion(Receiver receiver, double symbolSeconds) {
    /**
     * Distortion of a receiver that renews its estimate once in the reciprocal of the Doppler spread. An estimate that is
     * held for that time and used throughout errs by pi^2 / 12 = 0.82 on average (correlation exp(-(pi spread time)^2 /
     * 2), to second order); one that follows the data in between does better. Fitted to the requirements of
     * MIL-STD-188-110 Appendix C: see results/reference/waveform-calibration.csv.
     */
    static final double STALE_ESTIMATE = 0.3125;

    /** Returns the distortion's share of the signal's power on a given path. */
    double share(Reception reception) {
        double staleness = reception.dopplerSpreadHz() * receiver.trackingSeconds();
        return Decibels.toRatio(-receiver.ceilingDb())
                + STALE_ESTIMATE * staleness * staleness
                + lateEchoes(reception.delaySpreadSeconds());
    }

    /**
     * Of two equal paths the later one reaches into the next symbol by as much as it is beyond the tolerance: that share
     * of it is lost, and heard as noise; all of it if it comes later than a whole symbol.
     */
    private double lateEchoes(double delaySpreadSeconds) {
        double beyond = delaySpreadSeconds - receiver.delayToleranceSeconds();
        if (beyond <= 0) {
            return 0;
        }
        double lost = 0.5 * Math.min(1, beyond / symbolSeconds);
        return lost / (1 - lost);
    }
}
