package org.ionohaul.analysis;

import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.SizeGrid;

/**
 * The largest file that may be promised.
 *
 * @param deadlineSeconds by when, in seconds after pressing send
 * @param confidence how sure, above 0, below 1
 * @param bytes the largest size of {@link SizeGrid} of which that share of simulated trials is through by then, 0 if not even
 *     the smallest is; with the safe one, of which at least that share of trials is through in 95 of 100 studies whichever
 *     mode is picked, and the largest that may be so
 * @param fewestTrials how many trials a safe size needs
 * @param areTrialsEnough whether there are so many; else the safe size is 0
 * @param limits what kept those trials that did not have the next larger file than the safe one through
 */
public record Promise(
        double deadlineSeconds,
        double confidence,
        Estimate bytes,
        int fewestTrials,
        boolean areTrialsEnough,
        Limits limits) {
    /** Returns the size that may be promised, in bytes; 0 if none. */
    public long safeBytes() {
        return (long) bytes.low();
    }
}
