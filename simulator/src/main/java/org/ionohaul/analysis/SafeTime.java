package org.ionohaul.analysis;

import java.util.OptionalDouble;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.statistics.ToleranceBound;

/**
 * The time to plan for: at least so many trials keep it, which holds in 95 of 100 studies, whichever of the modes is taken
 * because it looks best.
 *
 * @param share share of trials that keep it at least, above 0, below 1
 * @param seconds the time, after pressing send; infinite if the trials leave open whether so many get through at all; empty
 *     if there are too few of them to say anything
 * @param fewestTrials how many trials are needed
 */
public record SafeTime(double share, OptionalDouble seconds, int fewestTrials) {
    /**
     * Bounds the time of one of several modes.
     *
     * @param completion its completion times
     * @param modes among how many modes is picked (Bonferroni)
     */
    public static SafeTime of(double share, OrderedSample completion, int modes) {
        ToleranceBound bound = new ToleranceBound(share, 1 - (1 - Estimate.CONFIDENCE) / modes);
        return new SafeTime(
                share,
                completion.size() < bound.fewestTrials()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(bound.of(completion)),
                bound.fewestTrials());
    }

    /** Returns the time; infinite also where there are too few trials. */
    public double secondsOrNever() {
        return seconds.orElse(Double.POSITIVE_INFINITY);
    }
}
