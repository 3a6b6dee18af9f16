package org.ionohaul.foresight;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.ionohaul.foresight.Guess.Span;

/**
 * A round that was played, as it is remembered.
 *
 * @param source what situations it is from: a scenario's name or {@code invented}
 * @param seed seed of the situations
 * @param round its number among them, from 1
 * @param sent size of the file, in bytes
 * @param horizonSeconds when watching ended
 * @param named the mode that was named as the first
 * @param sureness how sure that was, from 0 to 1
 * @param verdict what became of that
 * @param runs of each mode what was foretold and what happened
 */
public record Played(
        String source,
        long seed,
        int round,
        long sent,
        double horizonSeconds,
        String named,
        double sureness,
        Verdict verdict,
        List<Run> runs) {
    /** Copies the list. */
    public Played {
        runs = List.copyOf(runs);
    }

    /** What became of the mode that was named. */
    public enum Verdict {
        RIGHT,
        WRONG,
        /** No mode was through, or two at once. */
        UNDECIDED
    }

    /**
     * A mode's run.
     *
     * @param mode its name
     * @param guess what was foretold
     * @param deliveredSeconds when it was through; infinite if never
     * @param simulated what further trials say: from the time that 1 of 10 keep to that which 9 of 10 keep
     */
    public record Run(String mode, Span guess, double deliveredSeconds, Span simulated) {}

    /** Returns a round. */
    public static Played of(String source, long seed, Race race, Guess guess) {
        Situation situation = race.situation();
        OptionalInt winner = race.winner();
        Verdict verdict = winner.isEmpty()
                ? Verdict.UNDECIDED
                : winner.getAsInt() == guess.winner() ? Verdict.RIGHT : Verdict.WRONG;
        return new Played(
                source,
                seed,
                situation.round(),
                situation.transfer().totalBytes(),
                situation.scenario().horizonSeconds(),
                situation.modes().get(guess.winner()).name(),
                guess.sureness(),
                verdict,
                IntStream.range(0, situation.modes().size())
                        .mapToObj(it -> new Run(
                                situation.modes().get(it).name(),
                                guess.spans().get(it),
                                race.seconds(it),
                                new Span(
                                        race.others().get(it).quantile(0.1),
                                        race.others().get(it).quantile(0.9))))
                        .toList());
    }

    /** Returns whether a run lies in what was foretold of it. */
    boolean isHeld(Run run) {
        return run.guess().holds(run.deliveredSeconds(), horizonSeconds);
    }

    /** Returns the share of its ranges that held. */
    double heldShare() {
        return (double) runs.stream().filter(this::isHeld).count() / runs.size();
    }

    /** Returns the square of by how much the chance that was given missed (G. W. Brier, Monthly Weather Review 78, 1950); empty if undecided. */
    OptionalDouble brier() {
        double missed = verdict == Verdict.RIGHT ? 1 - sureness : sureness;
        return verdict == Verdict.UNDECIDED ? OptionalDouble.empty() : OptionalDouble.of(missed * missed);
    }

    /** Returns the mean interval score of its ranges, in doublings. */
    double rangeScore() {
        return runs.stream()
                .mapToDouble(it -> it.guess().score(it.deliveredSeconds(), horizonSeconds))
                .average()
                .orElseThrow();
    }

    /** Returns the same for the ranges that the simulation would have given. */
    double simulatedScore() {
        return runs.stream()
                .mapToDouble(it -> it.simulated().score(it.deliveredSeconds(), horizonSeconds))
                .average()
                .orElseThrow();
    }
}
