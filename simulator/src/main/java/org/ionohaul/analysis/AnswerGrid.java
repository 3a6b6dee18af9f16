package org.ionohaul.analysis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ionohaul.scenario.Transfer;

/**
 * The answer on one screen: what is sent and which way down, deadlines across, in each place the mode to use and how surely it
 * keeps the deadline.
 *
 * @param transfers a block for each transfer, whose rows have the same deadlines
 */
public record AnswerGrid(List<List<CaseAnswer>> transfers) {
    /** Copies the lists. */
    public AnswerGrid {
        transfers = transfers.stream().map(List::copyOf).toList();
    }

    /** Returns the grid of a study, in the scenario's order. */
    public static AnswerGrid of(StudySummary summary) {
        Map<Transfer, List<CaseAnswer>> rows = new LinkedHashMap<>();
        summary.cases().stream()
                .map(CaseAnswer::of)
                .forEach(it -> rows.computeIfAbsent(it.transfer(), transfer -> new ArrayList<>())
                        .add(it));
        return new AnswerGrid(List.copyOf(rows.values()));
    }
}
