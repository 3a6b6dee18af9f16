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
 * @param pairs every pair of modes, the one that ranks higher first, in order of ranking: the best against each other one,
 *     then the second against those after it, and so on
 * @param verdict what decides the result
 */
public record CaseSummary(
        Transfer transfer,
        Direction direction,
        List<ModeSummary> modes,
        List<Integer> ranking,
        List<Comparison> pairs,
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
        pairs = List.copyOf(pairs);
    }

    /**
     * Summarises a case with at least one trial.
     *
     * @param patienceSeconds how long the operator of the station that dials waits; infinite if for ever
     */
    static CaseSummary of(CaseTrials trials, double patienceSeconds) {
        List<ModeSummary> modes = trials.modes().stream()
                .map(it -> ModeSummary.of(trials.transfer(), it, patienceSeconds))
                .toList();
        List<Integer> ranking = ranking(modes);
        List<Comparison> pairs =
                Comparison.all(ranking.stream().map(trials.modes()::get).toList(), trials.transfer());
        List<ModeSummary> ranked = ranking.stream().map(modes::get).toList();
        return new CaseSummary(trials.transfer(), trials.direction(), modes, ranking, pairs, Verdict.of(ranked, pairs));
    }

    /** Returns the pairs of the best mode with each other one, in order of ranking. */
    public List<Comparison> comparisons() {
        return pairs.subList(0, modes.size() - 1);
    }

    /** Returns the pairs without the best mode, in order of ranking. */
    public List<Comparison> otherPairs() {
        return pairs.subList(modes.size() - 1, pairs.size());
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
