package org.ionohaul.scenario;

import org.ionohaul.limits.OutOfRange;
import org.ionohaul.link.Radio;

/**
 * One end of the link as the scenario describes it.
 *
 * @param name what people call it
 * @param radio its radio; processing is the mode's
 * @param patienceSeconds how long its operator waits before breaking off, positive; infinite if never
 */
public record StationDescription(String name, Radio radio, double patienceSeconds) {
    private static final double LONGEST_SECONDS = 3_600_000;

    /** Checks the patience. */
    public StationDescription {
        boolean isForEver = patienceSeconds == Double.POSITIVE_INFINITY;
        OutOfRange.unless(
                patienceSeconds > 0 && (isForEver || patienceSeconds <= LONGEST_SECONDS),
                "patienceSeconds",
                "must be above 0 and at most 1000 h",
                patienceSeconds);
    }
}
