package org.ionohaul.trial;

import java.util.List;
import org.ionohaul.link.Timing;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;

/**
 * How far the stations of a scenario may be from each other so that a mode keeps its rhythm.
 *
 * @param mode a mode with a rhythm
 * @param farthestNanos a signal's time over the longest path, in nanoseconds; below zero if no path is short enough
 * @param isKept whether the scenario's path is short enough
 */
public record Rhythm(Mode mode, long farthestNanos, boolean isKept) {
    /** Returns what there is to say of each mode of a scenario that has a rhythm, in the ways in which it sends files. */
    public static List<Rhythm> allOf(Scenario scenario) {
        return scenario.modes().stream()
                .filter(mode -> mode.arq().hasRhythm())
                .map(mode -> of(scenario, mode))
                .toList();
    }

    private static Rhythm of(Scenario scenario, Mode mode) {
        LinkPlan plan = new LinkPlan(scenario, mode);
        Timing timing = plan.timing(plan.spec());
        long farthestNanos = scenario.transfers().stream()
                .flatMap(transfer -> transfer.directions().stream())
                .map(Direction::sender)
                .distinct()
                .mapToLong(timing::farthestInRhythmNanos)
                .min()
                .orElse(Long.MAX_VALUE);
        return new Rhythm(mode, farthestNanos, scenario.propagationNanos() <= farthestNanos);
    }
}
