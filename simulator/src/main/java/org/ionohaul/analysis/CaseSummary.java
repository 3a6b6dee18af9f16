package org.ionohaul.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.CaseTrials;

/**
 * What the trials of one transfer in one direction come to.
 *
 * @param transfer what was sent
 * @param direction which way
 * @param modes one summary a mode, in the scenario's order
 * @param ranking indices into {@code modes}, best first: by how many others are better beyond chance, the surer one or,
 *     where neither is surer, the sooner one; then by how often it is through before another
 * @param leaders the best mode, or those that can't be told apart from it
 * @param deadlineLeaders the same for each deadline by itself
 * @param pairs every pair of modes, the one that ranks higher first, in order of ranking: the best against each other one,
 *     then the second against those after it, and so on
 * @param verdict what decides the result
 */
public record CaseSummary(
        Transfer transfer,
        Direction direction,
        List<ModeSummary> modes,
        List<Integer> ranking,
        Leaders leaders,
        List<Leaders> deadlineLeaders,
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
        deadlineLeaders = List.copyOf(deadlineLeaders);
        pairs = List.copyOf(pairs);
    }

    /** Summarises a case with at least one trial. */
    static CaseSummary of(CaseTrials trials) {
        return of(trials, 1 - Estimate.CONFIDENCE);
    }

    /**
     * Summarises a case with at least one trial.
     *
     * @param errorRate chance that is accepted that a mode is named alone that is not the best
     */
    static CaseSummary of(CaseTrials trials, double errorRate) {
        Transfer transfer = trials.transfer();
        List<ModeTally> tallies = trials.modes().stream()
                .map(it -> new ModeTally(it.rows(), transfer))
                .toList();
        List<ModeSummary> modes = IntStream.range(0, tallies.size())
                .mapToObj(i -> ModeSummary.of(transfer, trials.modes().get(i).mode(), tallies.get(i), tallies.size()))
                .toList();
        List<Double> deadlines = transfer.deadlinesSeconds();
        SubsetSelection selection = new SubsetSelection(
                tallies.stream().map(ModeTally::completionSeconds).toList(),
                deadlines,
                errorRate,
                Comparator.comparing(modes::get, BEST_FIRST));
        List<Integer> ranking = selection.ranking();
        return new CaseSummary(
                transfer,
                trials.direction(),
                modes,
                ranking,
                selection.leaders(),
                IntStream.range(0, deadlines.size())
                        .mapToObj(selection::leaders)
                        .toList(),
                pairs(trials, ranking, tallies),
                Verdict.of(
                        ranking.stream().map(modes::get).toList(),
                        () -> selection.tests(ranking.get(0), ranking.get(1)),
                        () -> selection.isArrivalMost(ranking.get(0), ranking.get(1)),
                        () -> SavedTime.of(
                                trials.modes().get(ranking.get(0)),
                                trials.modes().get(ranking.get(1)))));
    }

    private static List<Comparison> pairs(CaseTrials trials, List<Integer> ranking, List<ModeTally> tallies) {
        List<Comparison> pairs = new ArrayList<>();
        for (int i = 0; i < ranking.size(); i++) {
            for (int j = i + 1; j < ranking.size(); j++) {
                int first = ranking.get(i);
                int second = ranking.get(j);
                pairs.add(Comparison.of(
                        trials.modes().get(first).mode().name(),
                        tallies.get(first).completionSeconds(),
                        trials.modes().get(second).mode().name(),
                        tallies.get(second).completionSeconds(),
                        trials.transfer().deadlinesSeconds()));
            }
        }
        return pairs;
    }

    /** Returns the pairs of the best mode with each other one, in order of ranking. */
    public List<Comparison> comparisons() {
        return pairs.subList(0, modes.size() - 1);
    }

    /** Returns the pairs without the best mode, in order of ranking. */
    public List<Comparison> otherPairs() {
        return pairs.subList(modes.size() - 1, pairs.size());
    }

    /** Returns the summary of the mode that ranks next to the best; there must be two. */
    public ModeSummary next() {
        return modes.get(ranking.get(1));
    }

    /** Returns the summary of the best mode. */
    public ModeSummary best() {
        return modes.get(ranking.get(0));
    }
}
