package org.ionohaul.waveform;

import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.Reception;

/**
 * What a real receiver adds to the noise.
 *
 * @param receiver the receiver's traits
 * @param symbolSeconds length of a symbol, positive
 */
record Distortion(Receiver receiver, double symbolSeconds) {
    /**
     * By what factor the error of a real receiver's estimate exceeds that of straight lines between noiseless looks. The
     * reference receiver, which follows by straight lines, loses as much as the model at 1.5 where it loses most
     * (results/reference/receiver-anchor.csv: 5 Hz, looks every 107 ms); the requirements of MIL-STD-188-110 Appendix C
     * taken alone ask for 3 (waveform-calibration.csv).
     */
    static final double OVER_STRAIGHT_LINES = 1.5;

    /** Below this many radians the series of what straight lines miss is exact to 1 %, and the closed form no longer is. */
    private static final double SLOW = 0.1;

    /** Returns residual distortion, as a share of the signal's power of the moment, which it fades with. */
    double atRest() {
        return Decibels.toRatio(-receiver.ceilingDb());
    }

    /** Returns the share of the mean power that comes later than guard interval or equaliser reaches. */
    double late(Reception reception) {
        return reception.shareBeyond(receiver.delayToleranceSeconds(), symbolSeconds);
    }

    /**
     * Returns what changes of the path cost, over its mean power: the error of an estimate between two looks, and what a
     * symbol loses that is added up while its phase turns, (pi B T)^2 / 12 (Li and Cimini, "Bounds on the interchannel
     * interference of OFDM in time-varying impairments", IEEE Trans. Commun. 49(3), 2001, for a Doppler spectrum of
     * standard deviation B / 2).
     *
     * <p>Not in proportion to the faded power of the moment: an estimate errs by what the path has become since, whatever
     * is left of it, so that on a fast path no signal is strong enough.
     */
    double motion(Reception reception) {
        double spread = Math.PI * reception.dopplerSpreadHz();
        double within = spread * symbolSeconds;
        return OVER_STRAIGHT_LINES * missedByLines(spread * receiver.trackingSeconds()) + within * within / 12;
    }

    /**
     * Returns the mean square of what a straight line between two looks misses, over the mean power of a gain whose
     * correlation is exp(-(u t / T)^2 / 2) after a time t, T being the time between the looks (ITU-R F.1487 with u = pi x
     * Doppler spread x T): 5/3 + exp(-u^2 / 2) / 3 - 4 times the integral of (1 - x) exp(-(u x)^2 / 2) from 0 to 1. For
     * slow paths u^4 / 40.
     */
    static double missedByLines(double u) {
        if (u < SLOW) {
            return u * u * u * u / 40;
        }
        return 5.0 / 3 + Math.exp(-u * u / 2) / 3 - 2 * Coherence.power(u);
    }
}
