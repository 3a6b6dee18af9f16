package org.ionohaul.analysis;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.ionohaul.study.TrialRow;

/** What keeps a file from being through by a deadline. */
public enum Limit {
    /** It was still being sent. */
    TIME,
    /** The operator had broken off. */
    PATIENCE,
    /** The link was lost, and the redials were used up. */
    LOST_LINKS,
    /** No call was ever answered. */
    NO_LINK;

    /**
     * Returns what kept most of the trials that were late; empty if none was.
     *
     * @param throughSeconds when a trial had it through, infinite if never
     */
    public static Optional<Limit> mostOften(
            List<TrialRow> rows, ToDoubleFunction<TrialRow> throughSeconds, double deadlineSeconds) {
        Map<Limit, Integer> counts = new EnumMap<>(Limit.class);
        for (TrialRow row : rows) {
            if (throughSeconds.applyAsDouble(row) > deadlineSeconds) {
                counts.merge(of(row, deadlineSeconds), 1, Integer::sum);
            }
        }
        return counts.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    }

    private static Limit of(TrialRow row, double deadlineSeconds) {
        if (row.endedNanos() / 1e9 > deadlineSeconds) {
            return TIME;
        }
        return switch (row.ending()) {
            case OUT_OF_PATIENCE -> PATIENCE;
            case LINK_LOST -> LOST_LINKS;
            case NEVER_LINKED, NEVER_LINKED_OUT_OF_PATIENCE, NEVER_LINKED_AT_HORIZON -> NO_LINK;
            case COMPLETED, HANG_UP_UNANSWERED, NOTHING_MORE_HEARD, AT_HORIZON -> TIME;
        };
    }
}
