package org.ionohaul.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.study.StudyResult;

/**
 * Which file sizes may be promised by a deadline in one direction, with each mode, and about it.
 *
 * @param direction which way
 * @param deadlineSeconds the deadline asked for, in seconds after pressing send
 * @param confidence how sure, above 0, below 1
 * @param confidences the usual ones and the one asked for, rising
 * @param modes an entry a mode, in the scenario's order
 * @param best index of the mode with which the largest file may be promised
 * @param leaders the modes that keep the deadline most often with such a file, as far as they can be told apart; empty if
 *     nothing may be promised
 */
public record SizePromises(
        Direction direction,
        double deadlineSeconds,
        double confidence,
        List<Double> confidences,
        List<OfMode> modes,
        int best,
        Optional<Leaders> leaders) {
    /** The longest deadline that is told of, as a multiple of the one asked for. */
    public static final double LONGEST_DEADLINE_FACTOR = 2;

    /** How sure the contours of size against deadline are, rising. */
    public static final List<Double> CONTOURS = List.of(0.5, 0.8, 0.9);

    private static final double SHORTEST_DEADLINE_FACTOR = 1.0 / 3;
    private static final List<Double> USUAL_CONFIDENCES = List.of(0.5, 0.8, 0.9, 0.95);
    private static final List<Integer> ROUND_MINUTES =
            List.of(1, 2, 3, 5, 7, 10, 15, 20, 30, 45, 60, 90, 120, 180, 240);
    private static final Comparator<Promise> SAFEST_LAST = Comparator.comparingLong(Promise::safeBytes)
            .thenComparingDouble(it -> it.bytes().value());

    /**
     * What may be promised with one mode.
     *
     * @param mode the mode
     * @param asked by the deadline and with the confidence asked for
     * @param deadlines the same by round deadlines about it
     * @param contours for each of {@link #CONTOURS}, from which deadline on each size of {@link
     *     org.ionohaul.study.SizeGrid} may be promised, in
     *     seconds, infinite if by none; never falls with the size
     */
    public record OfMode(Mode mode, Promise asked, List<ByDeadline> deadlines, List<List<Double>> contours) {
        /** Copies the lists. */
        public OfMode {
            deadlines = List.copyOf(deadlines);
            contours = contours.stream().map(List::copyOf).toList();
        }
    }

    /**
     * What may be promised by one deadline.
     *
     * @param asked with the confidence asked for
     * @param byConfidence an entry a confidence
     */
    public record ByDeadline(Promise asked, List<Promise> byConfidence) {
        /** Copies the list. */
        public ByDeadline {
            byConfidence = List.copyOf(byConfidence);
        }
    }

    /** Copies the lists. */
    public SizePromises {
        confidences = List.copyOf(confidences);
        modes = List.copyOf(modes);
    }

    /**
     * Works out the promises of every direction of a study.
     *
     * @param result a study of {@link org.ionohaul.study.SizeTransfers}, with at least one trial done
     * @param deadlineSeconds within the time watched
     * @param confidence above 0, below 1
     */
    public static List<SizePromises> of(StudyResult result, double deadlineSeconds, double confidence) {
        return result.directions().stream()
                .map(it -> of(result, it, deadlineSeconds, confidence))
                .toList();
    }

    private static SizePromises of(StudyResult result, Direction direction, double deadlineSeconds, double confidence) {
        List<PromiseTable> tables = PromiseTable.of(result, direction);
        List<Double> confidences = withUsual(confidence);
        List<Double> deadlines =
                roundDeadlines(deadlineSeconds, result.scenario().horizonSeconds());
        List<OfMode> modes = tables.stream()
                .map(table -> new OfMode(
                        table.mode(),
                        table.largestFile(deadlineSeconds, confidence),
                        deadlines.stream()
                                .map(deadline -> new ByDeadline(
                                        table.largestFile(deadline, confidence),
                                        confidences.stream()
                                                .map(it -> table.largestFile(deadline, it))
                                                .toList()))
                                .toList(),
                        CONTOURS.stream().map(table::soonestDeadlines).toList()))
                .toList();
        int best = IntStream.range(0, modes.size())
                .boxed()
                .max(Comparator.comparing(i -> modes.get(i).asked(), SAFEST_LAST))
                .orElseThrow();
        return new SizePromises(
                direction,
                deadlineSeconds,
                confidence,
                confidences,
                modes,
                best,
                Optional.of(modes.get(best).asked().safeBytes())
                        .filter(it -> it > 0)
                        .map(it -> PromiseTable.leaders(tables, it, deadlineSeconds)));
    }

    /** Returns the usual confidences and one more, rising. */
    static List<Double> withUsual(double confidence) {
        return Stream.concat(USUAL_CONFIDENCES.stream(), Stream.of(confidence))
                .distinct()
                .sorted()
                .toList();
    }

    /** The one asked for, among round ones that are not too far from it. */
    private static List<Double> roundDeadlines(double deadlineSeconds, double horizonSeconds) {
        DoubleStream near = ROUND_MINUTES.stream()
                .mapToDouble(minutes -> 60 * minutes)
                .filter(it -> it >= SHORTEST_DEADLINE_FACTOR * deadlineSeconds && it <= horizonSeconds);
        return DoubleStream.concat(near, DoubleStream.of(deadlineSeconds))
                .distinct()
                .sorted()
                .boxed()
                .toList();
    }
}
