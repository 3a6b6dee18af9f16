package org.ionohaul.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.ionohaul.statistics.DiscordantPairs;
import org.ionohaul.statistics.Estimate;

/**
 * What decides a case: read off the outcomes and time budgets of the best mode and the next, trial by trial.
 *
 * <p>The best mode is picked after the fact. So it counts as ahead only if a paired test says so; of the tests made, one a
 * deadline and one of who comes first, the smallest p-value must bear a correction for their number (Bonferroni).
 *
 * @param reason what kind of thing decides
 * @param cause where the time goes that makes the difference, or most of the only mode's time; empty if no cause does
 * @param standing whether the best mode is ahead of the next
 * @param moreArrives which of the two delivers in more trials, beyond chance
 */
public record Verdict(Reason reason, Optional<CauseTime> cause, Standing standing, Arrival moreArrives) {
    /** What kind of thing decides a case. */
    public enum Reason {
        /** No mode delivers anything. */
        NOTHING_ARRIVES,
        /** There is one mode only. */
        ONLY_ONE_MODE,
        /** The best mode delivers in more trials than the next, beyond chance, and that makes most of the difference. */
        MORE_ARRIVES,
        /** The best mode needs less time. */
        LESS_TIME
    }

    /** How the best mode stands to the next. */
    public enum Standing {
        /** There is none next to it. */
        ALONE,
        /** It keeps a deadline or comes first more often, beyond chance. */
        AHEAD,
        /** It does not keep a deadline more often beyond chance, and the next comes first more often. */
        NEXT_IS_SOONER,
        /** Nothing tells the two apart beyond chance. */
        OPEN
    }

    /** Which of two modes delivers in more trials. */
    public enum Arrival {
        /** The best mode. */
        BEST,
        /** The next one. */
        NEXT,
        /** Neither, beyond chance. */
        ALIKE
    }

    /** Chance of a false alarm that is accepted when two modes are told apart. */
    private static final double SIGNIFICANCE = 1 - Estimate.CONFIDENCE;

    /**
     * Returns the verdict on a case.
     *
     * @param ranked summaries of the modes, best first, at least one
     * @param pairs the best against the next first
     * @param saved what the best saves most time on against the next
     */
    static Verdict of(List<ModeSummary> ranked, List<Comparison> pairs, Supplier<Optional<CauseTime>> saved) {
        ModeSummary best = ranked.get(0);
        if (best.delivered().value() == 0) {
            return alone(Reason.NOTHING_ARRIVES, best);
        }
        return ranked.size() == 1
                ? alone(Reason.ONLY_ONE_MODE, best)
                : between(best, ranked.get(1), pairs.get(0), saved);
    }

    /** Returns whether the best mode is ahead of the next beyond chance. */
    public boolean isClear() {
        return standing == Standing.AHEAD;
    }

    private static Verdict alone(Reason reason, ModeSummary mode) {
        return new Verdict(
                reason,
                mode.causes().stream().max(Comparator.comparingDouble(CauseTime::meanSeconds)),
                Standing.ALONE,
                Arrival.ALIKE);
    }

    private static Verdict between(
            ModeSummary best, ModeSummary next, Comparison pair, Supplier<Optional<CauseTime>> saved) {
        Arrival arrival = arrival(pair.delivered());
        return arrival == Arrival.BEST && makesMostOfTheDifference(best, next)
                ? new Verdict(Reason.MORE_ARRIVES, Optional.empty(), standing(pair), arrival)
                : new Verdict(Reason.LESS_TIME, saved.get(), standing(pair), arrival);
    }

    private static Arrival arrival(DiscordantPairs delivered) {
        if (delivered.exactPValue() >= SIGNIFICANCE) {
            return Arrival.ALIKE;
        }
        return delivered.first() > delivered.second() ? Arrival.BEST : Arrival.NEXT;
    }

    /** Where deadlines are kept far more often than files are delivered at all, it is time that decides. */
    private static boolean makesMostOfTheDifference(ModeSummary best, ModeSummary next) {
        double delivered = best.delivered().value() - next.delivered().value();
        return best.deadlines().isEmpty() || delivered >= (best.meanDeadlineShare() - next.meanDeadlineShare()) / 2;
    }

    private static Standing standing(Comparison pair) {
        double each = SIGNIFICANCE / (1 + pair.deadlines().size());
        boolean keepsMore =
                pair.deadlines().stream().anyMatch(it -> it.first() > it.second() && it.exactPValue() < each);
        boolean oneIsSooner = pair.signPValue() < each;
        boolean bestIsSooner = pair.firstBefore().hits() > pair.secondBefore().hits();
        if (keepsMore || (oneIsSooner && bestIsSooner)) {
            return Standing.AHEAD;
        }
        return oneIsSooner ? Standing.NEXT_IS_SOONER : Standing.OPEN;
    }
}
