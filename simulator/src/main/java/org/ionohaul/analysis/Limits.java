package org.ionohaul.analysis;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.ionohaul.study.TrialRow;

/**
 * What kept those trials that did not have a file through by a deadline.
 *
 * @param counts how many of them each limit kept; none where a limit is left out
 */
public record Limits(Map<Limit, Integer> counts) {
    /** Copies the counts. */
    public Limits {
        counts = Map.copyOf(counts);
    }

    /**
     * Goes through a mode's trials.
     *
     * @param throughSeconds when a trial had the file through, infinite if never
     * @param deadlineSeconds by when, in seconds after pressing send
     */
    static Limits of(List<TrialRow> rows, ToDoubleFunction<TrialRow> throughSeconds, double deadlineSeconds) {
        Map<Limit, Integer> counts = new EnumMap<>(Limit.class);
        rows.stream()
                .filter(it -> throughSeconds.applyAsDouble(it) > deadlineSeconds)
                .forEach(it -> counts.merge(Limit.of(it, deadlineSeconds), 1, Integer::sum));
        return new Limits(counts);
    }

    /** Returns how many trials were late. */
    public int late() {
        return counts.values().stream().mapToInt(it -> it).sum();
    }

    /** Returns what kept more of them than anything else, of equal ones the first; empty if none was late. */
    public Optional<Limit> largest() {
        return counts.entrySet().stream()
                .max(Map.Entry.<Limit, Integer>comparingByValue()
                        .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                .map(Map.Entry::getKey);
    }

    /** Returns how large a part of the late trials that makes, from 0 to 1; 0 if none was late. */
    public double partOfLargest() {
        return largest().map(it -> (double) counts.getOrDefault(it, 0) / late()).orElse(0.0);
    }

    /** Returns whether a later deadline would not have helped one of them. */
    public boolean areAllForGood() {
        return late() > 0 && !counts.containsKey(Limit.DEADLINE);
    }
}
