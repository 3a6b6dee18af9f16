package org.ionohaul.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.KeySweep;
import org.ionohaul.study.PlannedPoint;

/**
 * Which inputs matter: each key alone is set to the first and the last of its values, all others stay as they stand.
 *
 * @param scenario the scenario as it stands
 * @param keysAsked how many keys were to be tried
 * @param reference what the scenario comes to as it stands
 * @param bars one entry a key, in the order given; fewer than keys asked when it was interrupted
 */
public record Tornado(Scenario scenario, int keysAsked, VariationPoint reference, List<TornadoBar> bars) {
    /** Copies the list. */
    public Tornado {
        bars = List.copyOf(bars);
    }

    /** Returns what to run: the scenario as it stands, then each key's first and last value. */
    public static List<PlannedPoint> plan(List<KeySweep> sweeps) {
        return Stream.concat(
                        Stream.of(new PlannedPoint(Map.of())),
                        sweeps.stream().flatMap(it -> Stream.of(alone(it, it.first()), alone(it, it.last()))))
                .toList();
    }

    private static PlannedPoint alone(KeySweep sweep, String value) {
        return new PlannedPoint(Map.of(sweep.key(), value));
    }

    /**
     * Returns what the points come to that were done.
     *
     * @param points in the order planned, at least the first; a key with one end done only is left out
     */
    public static Tornado of(Scenario scenario, List<KeySweep> sweeps, List<VariationPoint> points) {
        return new Tornado(
                scenario,
                sweeps.size(),
                points.get(0),
                IntStream.range(0, (points.size() - 1) / 2)
                        .mapToObj(
                                i -> new TornadoBar(sweeps.get(i).key(), points.get(2 * i + 1), points.get(2 * i + 2)))
                        .toList());
    }

    /** Returns whether it was interrupted before all keys were done. */
    public boolean isPartial() {
        return bars.size() < keysAsked;
    }

    /** Returns among how many effects on a mode the largest is picked: both ends of every key. */
    public int choices() {
        return 2 * bars.size();
    }

    /** Returns the mode that is told of: the best as the scenario stands. */
    public int told(int caseIndex) {
        return reference.cases().get(caseIndex).best();
    }

    /**
     * Returns what matters to the time of the mode that is told of: the key that matters most and those that may matter as
     * much, that first; empty if none changes it beyond chance.
     */
    public List<TornadoBar> mattering(int caseIndex) {
        int mode = told(caseIndex);
        List<TornadoBar> ranked = ranked(caseIndex, mode);
        TornadoBar most = ranked.get(0);
        return most.isTold(caseIndex, mode, choices())
                ? Stream.concat(
                                Stream.of(most),
                                ranked.stream().skip(1).filter(it -> it.mayMatterAsMuchAs(most, caseIndex, mode)))
                        .toList()
                : List.of();
    }

    /** Returns the bars in order of what they do to a mode's time, the key that matters most first. */
    public List<TornadoBar> ranked(int caseIndex, int mode) {
        return ranked(bar -> bar.swingSeconds(caseIndex, mode));
    }

    /** Returns the bars in order of what they do to a mode's chance of a deadline, the key that matters most first. */
    public List<TornadoBar> ranked(int caseIndex, int mode, int deadline) {
        return ranked(bar -> bar.swingShare(caseIndex, mode, deadline));
    }

    private List<TornadoBar> ranked(ToDoubleFunction<TornadoBar> swing) {
        return bars.stream()
                .sorted(Comparator.comparingDouble(swing).reversed())
                .toList();
    }
}
