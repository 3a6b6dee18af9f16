package org.ionohaul.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.SizeTransfers;
import org.ionohaul.study.StudyResult;

/**
 * What one direction's trials say about files of every size.
 *
 * @param direction which way
 * @param trials how many trials of each mode they rest on
 * @param curves one curve a mode, in the scenario's order
 * @param pairs every pair of modes
 */
public record SizeAnswers(Direction direction, int trials, List<SizeCurve> curves, List<SizeComparison> pairs) {
    /** Copies the lists. */
    public SizeAnswers {
        curves = List.copyOf(curves);
        pairs = List.copyOf(pairs);
    }

    /** Returns how many sizes above {@link SizeTransfers#LARGEST_SENT_BYTES} were sent, but for the longest. */
    public int largerSent() {
        List<SizePoint> points = curves.get(0).points();
        return (int) points.subList(0, points.size() - 1).stream()
                .filter(it -> it.isSent() && it.bytes() > SizeTransfers.LARGEST_SENT_BYTES)
                .count();
    }

    /**
     * Reads the answers off a study, one entry a direction that occurs in it.
     *
     * @param result a study of {@link SizeTransfers}, or of any transfers as far as they go
     */
    public static List<SizeAnswers> of(StudyResult result) {
        return result.directions().stream().map(it -> of(result, it)).toList();
    }

    /**
     * Returns what is still to be sent under the same skies for crossings to be told as sharply as the trials allow; empty if
     * nothing is. Where modes change places may then turn out elsewhere: ask again of both studies together.
     *
     * @param result a study of {@link SizeTransfers}, with at least one trial done
     */
    public static Optional<Scenario> toBeSent(StudyResult result) {
        SortedMap<Long, List<Direction>> directionsByBytes = new TreeMap<>();
        for (SizeAnswers answers : of(result)) {
            answers.pairs().stream()
                    .flatMap(it -> it.sizesToSend().stream())
                    .distinct()
                    .forEach(bytes -> directionsByBytes
                            .computeIfAbsent(bytes, it -> new ArrayList<>())
                            .add(answers.direction()));
        }
        return directionsByBytes.isEmpty()
                ? Optional.empty()
                : Optional.of(SizeTransfers.more(result.scenario(), directionsByBytes));
    }

    /**
     * Reads the answers off a study.
     *
     * @param result a study of {@link SizeTransfers}, or of any transfers as far as they go
     * @param direction a direction that occurs in it
     */
    static SizeAnswers of(StudyResult result, Direction direction) {
        List<SizeTimes> modes = SizeTimes.of(result, direction);
        return new SizeAnswers(
                direction,
                result.trialsDone(),
                modes.stream().map(SizeCurve::of).toList(),
                IntStream.range(0, modes.size())
                        .boxed()
                        .flatMap(i -> IntStream.range(i + 1, modes.size())
                                .mapToObj(j -> SizeComparison.of(modes.get(i), modes.get(j))))
                        .toList());
    }
}
