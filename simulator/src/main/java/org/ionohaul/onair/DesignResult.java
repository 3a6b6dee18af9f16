package org.ionohaul.onair;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.statistics.PairedOdds;

/**
 * What a design comes to over many comparisons.
 *
 * @param design the design
 * @param rules what each rule makes of it
 * @param wins by pair of modes, in how many rounds the first was better than the second; an entry a mode, each with an
 *     entry a mode
 * @param rounds how many rounds that is of
 * @param airSeconds how long all its sessions are together, in the mean
 * @param eveningSeconds how long its longest evening is, with gaps, in the mean
 * @param evenings on how many evenings
 */
public record DesignResult(
        Design design,
        List<RuleResult> rules,
        List<List<Integer>> wins,
        int rounds,
        double airSeconds,
        double eveningSeconds,
        int evenings) {
    private static final double NANOS_A_SECOND = 1e9;

    /** Copies the lists. */
    public DesignResult {
        rules = List.copyOf(rules);
        wins = wins.stream().map(List::copyOf).toList();
    }

    /** Returns what a rule makes of it. */
    public RuleResult by(Rule rule) {
        return rules.stream().filter(it -> it.rule() == rule).findFirst().orElseThrow();
    }

    /** Returns how often either of two modes wins a round. */
    public PairedOdds odds(int first, int second) {
        return new PairedOdds(
                (double) wins.get(first).get(second) / rounds,
                (double) wins.get(second).get(first) / rounds);
    }

    /** Sums up comparisons, at least one. */
    static DesignResult of(Comparisons of, int design, List<Verdicts> verdicts) {
        Design its = of.designs().get(design);
        List<RuleResult> rules = new ArrayList<>();
        for (Rule rule : Rule.values()) {
            Counted named = new Counted(of.modes());
            Counted selfNamed = new Counted(of.modes());
            for (Verdicts it : verdicts) {
                named.add(it.named()[it.at(design, rule)]);
                selfNamed.add(it.selfNamed()[it.at(design, rule)]);
            }
            rules.add(new RuleResult(rule, named.counts(), selfNamed.counts(), verdicts.size()));
        }
        return new DesignResult(
                its,
                rules,
                IntStream.range(0, of.modes())
                        .mapToObj(first -> wins(of, design, first, verdicts))
                        .toList(),
                its.runsEach() * verdicts.size(),
                verdicts.stream().mapToLong(it -> it.airNanos()[design]).sum() / NANOS_A_SECOND / verdicts.size(),
                verdicts.stream().mapToLong(it -> it.eveningNanos()[design]).sum() / NANOS_A_SECOND / verdicts.size(),
                its.order()
                        .evenings(of.modes(), its.runsEach(), Comparisons.lot(of.seed(), 0))
                        .size());
    }

    private static List<Integer> wins(Comparisons of, int design, int first, List<Verdicts> verdicts) {
        return IntStream.range(0, of.modes())
                .mapToObj(second -> verdicts.stream()
                        .mapToInt(it -> it.roundsWon()[it.at(design, first, second)])
                        .sum())
                .toList();
    }
}
