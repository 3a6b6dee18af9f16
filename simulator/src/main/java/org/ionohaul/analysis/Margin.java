package org.ionohaul.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
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
 * @param deliveredLead how much more often it delivers at all, as a share from -1 to 1
 */
public record Margin(
        int next,
        Verdict.Standing standing,
        Estimate bestBefore,
        Estimate nextBefore,
        Estimate medianLeadSeconds,
        List<Estimate> deadlineLeads,
        Estimate deliveredLead) {
    /** Copies the list. */
    public Margin {
        deadlineLeads = List.copyOf(deadlineLeads);
    }

    /** Returns whether the best mode is through before the next on more trials than the other way round. */
    public boolean isUsuallyFirst() {
        return bestBefore.value() > nextBefore.value();
    }

    /** Returns the deadline, by its place, by which the lead in trials that keep it is surest; empty without deadlines. */
    public OptionalInt tellingDeadline() {
        return IntStream.range(0, deadlineLeads.size())
                .boxed()
                .max(Comparator.comparingDouble(i -> deadlineLeads.get(i).low()))
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
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
                        .toList(),
                pair.delivered().shareDifference(trials, Estimate.CONFIDENCE));
    }
}
