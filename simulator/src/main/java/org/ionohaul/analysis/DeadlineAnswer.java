package org.ionohaul.analysis;

import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Mode;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.Proportion;

/**
 * Which mode to use for a deadline, and how surely that keeps it.
 *
 * @param deadlineSeconds the deadline, in seconds after pressing send; infinite for "at all", where the case has none
 * @param modes the mode that keeps it most often or all that can't be told apart from it, see {@link Leaders}; empty if no
 *     mode ever kept it
 * @param share share of the simulated trials that keep it, from 0 to 1; of several modes the least
 * @param safeShare share of trials that keep it at least, which holds in 95 of 100 studies, whichever of the modes named is
 *     taken
 */
public record DeadlineAnswer(double deadlineSeconds, List<Mode> modes, double share, double safeShare) {
    /** Copies the list. */
    public DeadlineAnswer {
        modes = List.copyOf(modes);
    }

    /**
     * Returns the answer for one deadline.
     *
     * @param leaders the modes that it names, as indices
     * @param kept for each mode of the case, on how many of its trials it kept the deadline
     */
    static DeadlineAnswer of(double deadlineSeconds, List<Mode> modes, Leaders leaders, List<Proportion> kept) {
        if (kept.stream().allMatch(it -> it.hits() == 0)) {
            return new DeadlineAnswer(deadlineSeconds, List.of(), 0, 0);
        }
        // The mode with the fewest hits sets both: exact bounds rise with the count.
        Proportion fewest = leaders.modes().stream()
                .map(kept::get)
                .reduce((a, b) -> a.hits() <= b.hits() ? a : b)
                .orElseThrow();
        // One-sided, and for each of the modes, since those named are picked by the same trials (Bonferroni).
        double errorRate = (1 - Estimate.CONFIDENCE) / modes.size();
        return new DeadlineAnswer(
                deadlineSeconds,
                leaders.modes().stream().map(modes::get).toList(),
                fewest.share(),
                fewest.exact(1 - 2 * errorRate).low());
    }

    /** Returns the answers of a case, one a deadline; that of "at all" if it has none. */
    static List<DeadlineAnswer> all(CaseSummary summary) {
        List<Mode> modes = summary.modes().stream().map(ModeSummary::mode).toList();
        List<Double> deadlines = summary.transfer().deadlinesSeconds();
        if (deadlines.isEmpty()) {
            return List.of(of(
                    Double.POSITIVE_INFINITY,
                    modes,
                    summary.leaders(),
                    summary.modes().stream().map(ModeSummary::deliveredCount).toList()));
        }
        return IntStream.range(0, deadlines.size())
                .mapToObj(i -> of(
                        deadlines.get(i),
                        modes,
                        summary.deadlineLeaders().get(i),
                        summary.modes().stream()
                                .map(it -> it.deadlines().get(i).count())
                                .toList()))
                .toList();
    }
}
