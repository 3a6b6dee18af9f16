package org.ionohaul.analysis;

import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.session.Outcome;
import org.ionohaul.statistics.Proportion;

/**
 * How often sessions ended in one way.
 *
 * @param outcome the way
 * @param count how many of how many trials
 */
public record OutcomeShare(Outcome outcome, Proportion count) {
    /** Returns the ways worth telling of these modes: all, but wrong deliveries only if there were any. */
    public static List<Outcome> told(List<ModeSummary> modes) {
        boolean isAnyWrong =
                modes.stream().anyMatch(mode -> mode.failures().deliveredWrong().hits() > 0);
        return Stream.of(Outcome.values())
                .filter(outcome -> isAnyWrong || outcome != Outcome.DELIVERED_WRONG)
                .toList();
    }
}
