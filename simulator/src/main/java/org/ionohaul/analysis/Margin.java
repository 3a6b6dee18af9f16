package org.ionohaul.analysis;

import java.util.List;
import org.ionohaul.statistics.DiscordantPairs;
import org.ionohaul.statistics.Estimate;

/**
 * How far the best mode of a case is ahead of the next, trial by trial under the same skies.
 *
 * @param next index of the next best mode
 * @param standing what is told of the two beyond chance
 * @param bestBefore share of trials in which the best mode delivers before the next
 * @param nextBefore share of trials in which the next delivers before the best mode
 * @param medianLeadSeconds median of how much earlier the best mode delivers, in seconds; infinite if mostly just one does
 * @param deadlineLeads for each deadline, how much more often the best mode keeps it, as a share from -1 to 1
 */
public record Margin(
        int next,
        Verdict.Standing standing,
        Estimate bestBefore,
        Estimate nextBefore,
        Estimate medianLeadSeconds,
        List<Estimate> deadlineLeads) {
    /** Copies the list. */
    public Margin {
        deadlineLeads = List.copyOf(deadlineLeads);
    }

    /** Returns the margin of a case with at least two modes. */
    static Margin of(CaseSummary summary) {
        Comparison pair = summary.comparisons().get(0);
        int trials = pair.firstBefore().total();
        return new Margin(
                summary.ranking().get(1),
                summary.verdict().standing(),
                pair.firstBeforeShare(),
                pair.secondBefore().wilson(Estimate.CONFIDENCE),
                pair.medianLeadSeconds(),
                pair.deadlines().stream()
                        .map((DiscordantPairs it) -> it.shareDifference(trials, Estimate.CONFIDENCE))
                        .toList());
    }
}
