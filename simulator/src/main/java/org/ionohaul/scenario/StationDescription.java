package org.ionohaul.scenario;

import org.ionohaul.limits.OutOfRange;
import org.ionohaul.link.StationTimes;

/**
 * One end of the link as the scenario describes it.
 *
 * @param name what people call it
 * @param times how fast it changes between sending and receiving; processing is the mode's
 * @param patienceSeconds how long its operator waits before breaking off, positive; infinite if never
 */
public record StationDescription(String name, StationTimes times, double patienceSeconds) {
    /** Checks the patience. */
    public StationDescription {
        OutOfRange.unless(patienceSeconds > 0, "patienceSeconds", "must be above 0", patienceSeconds);
    }
}
