package org.ionohaul.analysis;

import java.util.List;
import org.ionohaul.statistics.DiscordantPairs;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.PairedTimes;

/**
 * By how much modes that can't be told apart may differ at most: what the trials leave open, so that "no difference was
 * found" is a number and not a wish. All bounds of a case together are made to hold with confidence {@link
 * Estimate#CONFIDENCE}.
 *
 * @param share most that any two of them may differ in the chance that was compared, from 0 to 1
 * @param seconds most that the median lead of any of them over another may be, in seconds; infinite if the trials set no
 *     limit, because on too many of them just one gets through
 */
public record Alike(double share, double seconds) {
    /** Returns the bound that holds for both pairs of modes. */
    Alike and(Alike other) {
        return new Alike(Math.max(share, other.share), Math.max(seconds, other.seconds));
    }

    /**
     * Bounds the difference of two modes.
     *
     * @param times their completion times
     * @param chances for each chance that is compared, the trials that decide it
     * @param errorRate chance that is accepted that a bound fails, for each
     */
    static Alike of(PairedTimes times, List<DiscordantPairs> chances, double errorRate) {
        int trials = times.neither().total();
        double share = chances.stream()
                .map(it -> it.shareDifference(trials, 1 - errorRate))
                .mapToDouble(Alike::furthest)
                .max()
                .orElse(0);
        return new Alike(share, furthest(times.lead(0.5, 1 - errorRate)));
    }

    private static double furthest(Estimate estimate) {
        return Math.max(Math.abs(estimate.low()), Math.abs(estimate.high()));
    }
}
