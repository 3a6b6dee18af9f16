package org.ionohaul.analysis;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.KeySweep;
import org.ionohaul.study.PlannedPoint;

/**
 * A scenario run again and again under the same skies with one or two of its keys changed.
 *
 * @param scenario the scenario at the first point
 * @param sweeps the keys that are varied, one or two
 * @param points one entry a combination of values, the last key's values running fastest; effects are against the first;
 *     at least one, fewer than combinations when it was interrupted
 */
public record Variation(Scenario scenario, List<KeySweep> sweeps, List<VariationPoint> points) {
    /** Copies the lists. */
    public Variation {
        sweeps = List.copyOf(sweeps);
        points = List.copyOf(points);
    }

    /** Returns what to run: every combination of values, the last key's running fastest. */
    public static List<PlannedPoint> plan(List<KeySweep> sweeps) {
        List<Map<String, String>> combinations = List.of(Map.of());
        for (KeySweep sweep : sweeps) {
            combinations = combinations.stream()
                    .flatMap(head -> sweep.values().stream().map(value -> with(head, sweep.key(), value)))
                    .toList();
        }
        return combinations.stream().map(PlannedPoint::new).toList();
    }

    private static Map<String, String> with(Map<String, String> head, String key, String value) {
        Map<String, String> all = new LinkedHashMap<>(head);
        all.put(key, value);
        return all;
    }

    /** Returns the mode whose change is told: the best at first or, if nothing arrives there, at last. */
    public int told(int caseIndex) {
        CasePoint first = point(0, caseIndex);
        return first.choice() == CasePoint.Choice.NOTHING_ARRIVES
                ? point(points.size() - 1, caseIndex).best()
                : first.best();
    }

    /** Returns what a case comes to at a point. */
    public CasePoint point(int index, int caseIndex) {
        return points.get(index).cases().get(caseIndex);
    }

    /** Returns the point furthest along a key that was done, the other key at its first value; 0 if there is none. */
    public int lastAlong(int key) {
        int step = key == sweeps.size() - 1 ? 1 : sweeps.get(1).values().size();
        int done = (points.size() - 1) / step;
        return step * Math.min(done, sweeps.get(key).values().size() - 1);
    }

    /** Returns the modes that the change does nothing to, in any trial of a case. */
    public List<Integer> untouched(int caseIndex) {
        return IntStream.range(0, scenario.modes().size())
                .filter(mode -> points.stream()
                        .allMatch(it -> it.cases()
                                .get(caseIndex)
                                .modes()
                                .get(mode)
                                .effect()
                                .isNothing()))
                .boxed()
                .toList();
    }

    /** Returns how many points were asked for. */
    public int pointsAsked() {
        return plan(sweeps).size();
    }

    /** Returns whether it was interrupted before all points were done. */
    public boolean isPartial() {
        return points.size() < pointsAsked();
    }
}
