package org.ionohaul.onair;

import java.util.List;
import org.ionohaul.scenario.Provenance;

/**
 * All that is reported of runs on the air.
 *
 * @param findings what was found
 * @param startClockSeconds time of day when an evening's first run begins, in seconds since midnight
 * @param longestEveningSeconds how long an evening may be in a plan
 * @param plans for each power of {@link #POWERS}, the plans that have it, that with the least time on the air first
 * @param provenance where the scenario comes from
 */
public record RunAnswer(
        RunFindings findings,
        double startClockSeconds,
        double longestEveningSeconds,
        List<List<Plan>> plans,
        Provenance provenance) {
    /** Chances that are planned for, rising. */
    public static final List<Double> POWERS = List.of(0.8, 0.9);

    private static final double DAY_SECONDS = 86_400;

    /** Copies the lists. */
    public RunAnswer {
        plans = plans.stream().map(List::copyOf).toList();
    }

    /**
     * Works out the plans.
     *
     * @param sendClockSeconds time of day when the scenario's operator presses send, in seconds since midnight
     * @param longestEveningSeconds how long an evening may be in a plan
     */
    public static RunAnswer of(
            RunFindings findings, double sendClockSeconds, double longestEveningSeconds, Provenance provenance) {
        return new RunAnswer(
                findings,
                (sendClockSeconds + findings.question().startSeconds()) % DAY_SECONDS,
                longestEveningSeconds,
                POWERS.stream()
                        .map(it -> Plans.of(findings, it, longestEveningSeconds))
                        .toList(),
                provenance);
    }
}
