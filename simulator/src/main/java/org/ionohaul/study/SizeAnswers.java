package org.ionohaul.study;

import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Direction;

/**
 * What one direction's trials of a long transfer say about files of every size.
 *
 * @param direction which way
 * @param curves one curve a mode, in the scenario's order
 * @param duels every pair of modes
 */
public record SizeAnswers(Direction direction, List<SizeCurve> curves, List<SizeDuel> duels) {
    /** Copies the lists. */
    public SizeAnswers {
        curves = List.copyOf(curves);
        duels = List.copyOf(duels);
    }

    /** Reads the answers off a study of {@link LongTransfer}, or off any transfer as far as it goes. */
    public static SizeAnswers of(CaseTrials trials) {
        long bytes = trials.transfer().totalBytes();
        List<ModeTrials> modes = trials.modes();
        return new SizeAnswers(
                trials.direction(),
                modes.stream().map(mode -> SizeCurve.of(mode, bytes)).toList(),
                IntStream.range(0, modes.size())
                        .boxed()
                        .flatMap(i -> IntStream.range(i + 1, modes.size())
                                .mapToObj(j -> SizeDuel.of(modes.get(i), modes.get(j), bytes)))
                        .toList());
    }
}
