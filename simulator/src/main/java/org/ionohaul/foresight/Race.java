package org.ionohaul.foresight;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Mode;
import org.ionohaul.session.ProgressCurve;
import org.ionohaul.session.SessionResult;
import org.ionohaul.session.SessionTrace;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.statistics.Proportion;
import org.ionohaul.study.TrialPool;
import org.ionohaul.trial.Trials;

/**
 * A race under one sky, and what further ones would have come to.
 *
 * @param situation what was shown
 * @param runs the race: each mode's session
 * @param others times of each mode in further trials, in seconds; infinite if it never delivered
 * @param firsts in how many of those trials each mode was through before all others
 */
public record Race(Situation situation, List<SessionResult> runs, List<OrderedSample> others, List<Proportion> firsts) {
    /** Copies the lists. */
    public Race {
        runs = List.copyOf(runs);
        others = List.copyOf(others);
        firsts = List.copyOf(firsts);
    }

    /**
     * Runs the race, which is the trial with the round's number, and as many others as the scenario has trials.
     *
     * @return empty if cancelled
     */
    public static Optional<Race> of(Situation situation, TrialPool pool) {
        Trials trials = new Trials(situation.scenario());
        int asked = situation.scenario().trials();
        List<double[]> times = pool.run(
                asked,
                trial -> situation.modes().stream()
                        .mapToDouble(mode -> seconds(run(trials, situation, mode, number(situation, trial))))
                        .toArray());
        if (times.size() < asked) {
            return Optional.empty();
        }
        int modes = situation.modes().size();
        return Optional.of(new Race(
                situation,
                situation.modes().stream()
                        .map(mode -> run(trials, situation, mode, situation.round()))
                        .toList(),
                IntStream.range(0, modes)
                        .mapToObj(mode -> OrderedSample.of(
                                times.stream().mapToDouble(it -> it[mode]).toArray()))
                        .toList(),
                IntStream.range(0, modes)
                        .mapToObj(mode -> new Proportion(
                                (int) times.stream()
                                        .filter(it -> first(it).equals(OptionalInt.of(mode)))
                                        .count(),
                                asked))
                        .toList()));
    }

    /** The race's own trial is none of the others. */
    private static long number(Situation situation, int other) {
        return other < situation.round() ? other : other + 1L;
    }

    private static SessionResult run(Trials trials, Situation situation, Mode mode, long number) {
        return trials.run(
                situation.transfer(), situation.transfer().directions().get(0), mode, number, SessionTrace.NONE);
    }

    private static double seconds(SessionResult result) {
        return result.deliveredNanos().isPresent()
                ? result.deliveredNanos().getAsLong() * 1e-9
                : Double.POSITIVE_INFINITY;
    }

    private static OptionalInt first(double[] seconds) {
        double best = Arrays.stream(seconds).min().orElseThrow();
        int[] who = IntStream.range(0, seconds.length)
                .filter(it -> seconds[it] == best)
                .toArray();
        return Double.isFinite(best) && who.length == 1 ? OptionalInt.of(who[0]) : OptionalInt.empty();
    }

    /** Returns when a mode was through in the race, in seconds; infinite if never. */
    public double seconds(int mode) {
        return seconds(runs.get(mode));
    }

    /** Returns which mode was through before all others; empty if none was, or two at once. */
    public OptionalInt winner() {
        return first(IntStream.range(0, runs.size()).mapToDouble(this::seconds).toArray());
    }

    /** Returns how many bytes a mode's receiver held after so many seconds. */
    long held(int mode, double seconds) {
        ProgressCurve progress = runs.get(mode).progress();
        long held = 0;
        for (int rise = 0; rise < progress.size() && progress.atNanos(rise) <= seconds * 1e9; rise++) {
            held = progress.heldBytes(rise);
        }
        return held;
    }

    /** Returns when the last mode was through or had ended, in seconds. */
    double endSeconds() {
        return IntStream.range(0, runs.size())
                .mapToDouble(it -> Double.isFinite(seconds(it))
                        ? seconds(it)
                        : runs.get(it).endedNanos() * 1e-9)
                .max()
                .orElseThrow();
    }
}
