package org.ionohaul.analysis;

import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.study.ModeTrials;

/**
 * Few trials that stand for all of a mode's: each for an equal part of them, by the completion time in its middle.
 *
 * <p>After Kay, Kola, Hullman and Munson, "When (ish) is my bus?" (CHI 2016): laypeople read such dots better than curves
 * or shaded bands.
 *
 * @param seconds the completion times, rising, infinite where nothing arrives
 */
public record LikelyTrials(List<Double> seconds) {
    /** How many there are. */
    public static final int COUNT = 50;

    /** Copies the list. */
    public LikelyTrials {
        seconds = List.copyOf(seconds);
    }

    /** Returns those of a mode: quantiles in the middle of each fiftieth, see {@link OrderedSample}. */
    public static LikelyTrials of(ModeTrials mode) {
        OrderedSample completion = OrderedSample.of(mode.completionSeconds());
        return new LikelyTrials(IntStream.range(0, COUNT)
                .mapToObj(i -> completion.quantile((i + 0.5) / COUNT))
                .toList());
    }

    /** Returns those that are through before an instant. */
    public List<Double> before(double instantSeconds) {
        return seconds.stream().filter(it -> it < instantSeconds).toList();
    }

    /** Returns how many are never through. */
    public int never() {
        return (int) seconds.stream().filter(it -> it.isInfinite()).count();
    }
}
