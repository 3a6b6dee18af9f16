package org.ionohaul.onair;

import java.util.List;
import java.util.function.IntFunction;
import java.util.function.IntUnaryOperator;

/** What runs in some order came to. */
final class Runs {
    private final double[][] throughSeconds;
    private final long airNanos;
    private final long eveningNanos;

    private Runs(double[][] throughSeconds, long airNanos, long eveningNanos) {
        this.throughSeconds = throughSeconds;
        this.airNanos = airNanos;
        this.eveningNanos = eveningNanos;
    }

    /**
     * When runs are made.
     *
     * @param startNanos when each evening's first run begins, in nanoseconds since its sky began
     * @param gapNanos from the end of a run to the beginning of the next
     */
    record Timetable(long startNanos, long gapNanos) {}

    /**
     * Makes runs, one after another.
     *
     * @param order for each evening, the names in the order of their runs
     * @param names how many names there are, each with as many runs
     * @param modeOf which mode a name stands for: two names for one mode compare it with itself
     * @param skies an evening by its number
     */
    static Runs of(
            List<List<Integer>> order,
            int names,
            IntUnaryOperator modeOf,
            IntFunction<? extends Evening> skies,
            Timetable timetable) {
        int each = order.stream().mapToInt(List::size).sum() / names;
        double[][] throughSeconds = new double[names][each];
        int[] made = new int[names];
        long airNanos = 0;
        long eveningNanos = 0;
        for (int evening = 0; evening < order.size(); evening++) {
            Evening sky = skies.apply(evening);
            int[] repeats = new int[names];
            long at = timetable.startNanos();
            for (int name : order.get(evening)) {
                int mode = modeOf.applyAsInt(name);
                Run run = sky.run(mode, repeats[mode]++, at);
                throughSeconds[name][made[name]++] = run.throughSeconds();
                airNanos += run.endedNanos();
                eveningNanos = Math.max(eveningNanos, at + run.endedNanos() - timetable.startNanos());
                at += run.endedNanos() + timetable.gapNanos();
            }
        }
        return new Runs(throughSeconds, airNanos, eveningNanos);
    }

    /** Returns for each name the times of its runs in the order made, infinite if one never got through. */
    double[][] throughSeconds() {
        return throughSeconds;
    }

    /** Returns how long all sessions were together. */
    long airNanos() {
        return airNanos;
    }

    /** Returns how long the longest evening was, from its first run to the end of its last. */
    long eveningNanos() {
        return eveningNanos;
    }
}
