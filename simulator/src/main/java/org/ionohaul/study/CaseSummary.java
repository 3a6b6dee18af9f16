package org.ionohaul.study;

import java.util.Comparator;
import java.util.List;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Transfer;

/**
 * What the trials of one transfer in one direction come to.
 *
 * @param transfer what was sent
 * @param direction which way
 * @param modes one summary a mode, in the scenario's order
 * @param ranking indices into {@code modes}, best first: by mean chance over the deadlines, then delivered share, then
 *     the time that 9 of 10 trials keep, then the median
 * @param comparisons the best mode against each other one, in order of ranking
 * @param verdict what decides the result
 */
public record CaseSummary(
        Transfer transfer,
        Direction direction,
        List<ModeSummary> modes,
        List<Integer> ranking,
        List<Comparison> comparisons,
        Verdict verdict) {
    private static final Comparator<ModeSummary> BEST_FIRST = Comparator.comparingDouble(ModeSummary::meanDeadlineShare)
            .thenComparingDouble(mode -> mode.delivered().value())
            .reversed()
            .thenComparingDouble(mode -> mode.ninthSeconds().value())
            .thenComparingDouble(mode -> mode.medianSeconds().value());

    /** Copies the lists. */
    public CaseSummary {
        modes = List.copyOf(modes);
        ranking = List.copyOf(ranking);
        comparisons = List.copyOf(comparisons);
    }

    /** Summarises a case with at least one trial. */
    public static CaseSummary of(CaseTrials trials) {
        List<ModeSummary> modes = trials.modes().stream()
                .map(it -> ModeSummary.of(trials.transfer(), it))
                .toList();
        List<Integer> ranking = ranking(modes);
        ModeTrials best = trials.modes().get(ranking.get(0));
        List<Comparison> comparisons = ranking.stream()
                .skip(1)
                .map(trials.modes()::get)
                .map(other -> Comparison.of(best, other, trials.transfer().deadlinesSeconds()))
                .toList();
        List<ModeSummary> ranked = ranking.stream().map(modes::get).toList();
        return new CaseSummary(
                trials.transfer(), trials.direction(), modes, ranking, comparisons, Verdict.of(ranked, comparisons));
    }

    /** Returns the summary of the best mode. */
    public ModeSummary best() {
        return modes.get(ranking.get(0));
    }

    private static List<Integer> ranking(List<ModeSummary> modes) {
        // The sort is stable: equal modes keep the scenario's order.
        return modes.stream().sorted(BEST_FIRST).map(modes::indexOf).toList();
    }
}
