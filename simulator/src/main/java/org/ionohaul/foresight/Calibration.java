package org.ionohaul.foresight;

import java.util.List;
import java.util.Optional;
import org.ionohaul.statistics.BoundedMean;
import org.ionohaul.statistics.Estimate;

/**
 * How well forecasts held over rounds. The ranges of one round share a sky and count as one for the intervals.
 *
 * @param rounds the rounds, at least one
 */
public record Calibration(List<Played> rounds) {
    /** What tossing a coin and saying so scores. */
    public static final double COIN_BRIER = 0.25;

    /** Copies the list. */
    public Calibration {
        rounds = List.copyOf(rounds);
        if (rounds.isEmpty()) {
            throw new IllegalArgumentException("rounds must not be empty");
        }
    }

    /** Returns how many ranges were given. */
    long ranges() {
        return rounds.stream().mapToLong(it -> it.runs().size()).sum();
    }

    /** Returns how many of them held. */
    long held() {
        return rounds.stream()
                .mapToLong(round -> round.runs().stream().filter(round::isHeld).count())
                .sum();
    }

    /** Returns the share of ranges that held, mean over rounds. */
    Estimate heldShare() {
        return BoundedMean.of(rounds.stream().map(Played::heldShare).toList(), Estimate.CONFIDENCE);
    }

    private List<Double> briers() {
        return rounds.stream().flatMap(it -> it.brier().stream().boxed()).toList();
    }

    /** Returns how many rounds had a winner. */
    int decided() {
        return briers().size();
    }

    /** Returns how often the mode that was named won. */
    long right() {
        return rounds.stream()
                .filter(it -> it.verdict() == Played.Verdict.RIGHT)
                .count();
    }

    /** Returns the mean chance that was given to the mode that was named, in decided rounds. */
    double meanSureness() {
        return rounds.stream()
                .filter(it -> it.verdict() != Played.Verdict.UNDECIDED)
                .mapToDouble(Played::sureness)
                .average()
                .orElse(Double.NaN);
    }

    /** Returns how often the mode that was named won, as a share with its interval; empty if no round was decided. */
    Optional<Estimate> rightShare() {
        return decided() == 0
                ? Optional.empty()
                : Optional.of(BoundedMean.of(
                        rounds.stream()
                                .filter(it -> it.verdict() != Played.Verdict.UNDECIDED)
                                .map(it -> it.verdict() == Played.Verdict.RIGHT ? 1.0 : 0.0)
                                .toList(),
                        Estimate.CONFIDENCE));
    }

    /** Returns the mean Brier score; empty if no round was decided. */
    Optional<Estimate> brier() {
        return decided() == 0 ? Optional.empty() : Optional.of(BoundedMean.of(briers(), Estimate.CONFIDENCE));
    }

    /** Returns the mean interval score, in doublings. */
    double rangeScore() {
        return rounds.stream().mapToDouble(Played::rangeScore).average().orElseThrow();
    }

    /** Returns that of the ranges that the simulation would have given. */
    double simulatedScore() {
        return rounds.stream().mapToDouble(Played::simulatedScore).average().orElseThrow();
    }
}
