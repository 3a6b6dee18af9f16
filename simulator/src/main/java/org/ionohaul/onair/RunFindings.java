package org.ionohaul.onair;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.study.TrialPool;

/**
 * What is found of runs on the air.
 *
 * @param question what was asked
 * @param sizes what is sent in each run: the transfer itself, then smaller ones
 * @param truths which mode is truly better, for each size
 * @param designs what each way of comparing comes to
 * @param stops what stopping early comes to; nothing for more than two modes
 * @param trialsDone how many comparisons of each design were made: fewer than asked when interrupted
 */
public record RunFindings(
        RunQuestion question,
        List<Transfer> sizes,
        List<Truth> truths,
        List<DesignResult> designs,
        List<StopResult> stops,
        int trialsDone) {
    /** Copies the lists. */
    public RunFindings {
        sizes = List.copyOf(sizes);
        truths = List.copyOf(truths);
        designs = List.copyOf(designs);
        stops = List.copyOf(stops);
    }

    /**
     * Makes the comparisons.
     *
     * @param truths what {@link RunQuestion#truths} found
     * @return nothing if cancelled before the first was made
     */
    public static Optional<RunFindings> of(RunQuestion question, List<Truth> truths, TrialPool pool) {
        Comparisons comparisons = question.ways();
        List<Verdicts> verdicts = pool.run(question.comparisons(), comparisons::make);
        return verdicts.isEmpty() ? Optional.empty() : Optional.of(of(question, comparisons, truths, verdicts));
    }

    /** Sums up comparisons, at least one. */
    static RunFindings of(RunQuestion question, Comparisons comparisons, List<Truth> truths, List<Verdicts> verdicts) {
        return new RunFindings(
                question,
                question.sizes(),
                truths,
                IntStream.range(0, comparisons.designs().size())
                        .mapToObj(it -> DesignResult.of(comparisons, it, verdicts))
                        .toList(),
                StopResult.all(comparisons, verdicts),
                verdicts.size());
    }

    /** Returns whether it was interrupted before all comparisons were made. */
    public boolean isPartial() {
        return trialsDone < question.comparisons();
    }

    /** Returns the truth about the transfer itself. */
    public Truth truth() {
        return truths.get(0);
    }

    /** Returns what a design of the transfer itself comes to. */
    public DesignResult result(RunOrder order, int runsEach) {
        return result(new Design(0, order, runsEach));
    }

    /** Returns what a design comes to. */
    public DesignResult result(Design design) {
        return find(design).orElseThrow(() -> new IllegalArgumentException("not tried: " + design));
    }

    /** Returns what a design comes to; nothing if it was not tried. */
    public Optional<DesignResult> find(Design design) {
        return designs.stream().filter(it -> it.design().equals(design)).findFirst();
    }
}
