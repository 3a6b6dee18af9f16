package org.ionohaul.channel;

import java.util.List;
import org.ionohaul.limits.OutOfRange;

/**
 * One way a signal takes through the ionosphere, as in the Watterson model of ITU-R F.1487: a delayed copy with a
 * complex Gaussian gain whose Doppler power spectrum is Gaussian.
 *
 * @param delaySeconds delay after the earliest path, zero or more
 * @param powerDb mean power relative to the other paths, in dB
 * @param dopplerShiftHz centre of the Doppler spectrum, in Hz
 * @param dopplerSpreadHz width of the Doppler spectrum in Hz: twice its standard deviation (2 sigma); zero for a path
 *     that does not fade
 */
public record PropagationPath(double delaySeconds, double powerDb, double dopplerShiftHz, double dopplerSpreadHz) {
    /** Checks every value. */
    public PropagationPath {
        OutOfRange.unless(delaySeconds >= 0 && delaySeconds < 1, "delaySeconds", "must be from 0 to 1", delaySeconds);
        OutOfRange.unless(Math.abs(powerDb) < 1000, "powerDb", "must be finite", powerDb);
        OutOfRange.unless(Math.abs(dopplerShiftHz) < 1000, "dopplerShiftHz", "must be within 1 kHz", dopplerShiftHz);
        OutOfRange.unless(
                dopplerSpreadHz >= 0 && dopplerSpreadHz < 1000,
                "dopplerSpreadHz",
                "must be from 0 to 1 kHz",
                dopplerSpreadHz);
    }

    /** Returns each path's share of the mean power; they sum to 1. */
    static double[] shares(List<PropagationPath> paths) {
        double[] ratios = paths.stream()
                .mapToDouble(path -> Decibels.toRatio(path.powerDb()))
                .toArray();
        double total = 0;
        for (double ratio : ratios) {
            total += ratio;
        }
        for (int i = 0; i < ratios.length; i++) {
            ratios[i] /= total;
        }
        return ratios;
    }
}
