package org.ionohaul.study;

import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.scenario.Scenario;

/**
 * A scenario run again and again under the same skies with one or two of its keys changed.
 *
 * @param scenario the scenario at the first point
 * @param sweeps the keys that are varied, one or two
 * @param points one entry a combination of values, the last key's values running fastest; effects are against the first
 */
public record Variation(Scenario scenario, List<KeySweep> sweeps, List<VariationPoint> points) {
    /** Copies the lists. */
    public Variation {
        sweeps = List.copyOf(sweeps);
        points = List.copyOf(points);
    }

    /** Returns every combination of values, the last key's running fastest. */
    public static List<List<String>> combinations(List<KeySweep> sweeps) {
        List<List<String>> combinations = List.of(List.of());
        for (KeySweep sweep : sweeps) {
            combinations = combinations.stream()
                    .flatMap(head -> sweep.values().stream()
                            .map(value -> Stream.concat(head.stream(), Stream.of(value))
                                    .toList()))
                    .toList();
        }
        return combinations;
    }
}
