package org.ionohaul.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * What decides a case: read off the outcomes and time budgets of the best mode and the next, trial by trial.
 *
 * @param reason what kind of thing decides
 * @param most where most of the time goes of a mode that stands alone; empty for any other
 * @param saved what the best mode saves most time on; empty if it saves nothing, or time does not decide
 * @param standing whether the best mode is ahead of the next
 * @param deadlines for each deadline, which of the two keeps it in more trials, beyond chance; empty without a next mode
 * @param moreArrives which of the two delivers in more trials, beyond chance
 * @param usuallyFirst which of the two is through first in more trials, beyond chance
 */
public record Verdict(
        Reason reason,
        Optional<CauseTime> most,
        Optional<SavedTime> saved,
        Standing standing,
        List<Side> deadlines,
        Side moreArrives,
        Side usuallyFirst) {
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
        /** It keeps a deadline more often, or without deadlines delivers more often, beyond chance. */
        SURER,
        /** Of that nothing can be told; it is through first more often, beyond chance. */
        SOONER,
        /** Each keeps a deadline more often than the other. */
        MIXED,
        /** Nothing tells the two apart beyond chance. */
        OPEN
    }

    /** Copies the list. */
    public Verdict {
        deadlines = List.copyOf(deadlines);
    }

    /**
     * Returns the verdict on a case.
     *
     * @param ranked summaries of the modes, best first, at least one
     * @param tests the best against the next; not asked if there is none
     * @param isArrivalMost whether arriving more often makes most of its lead in deadlines kept
     * @param saved what the best saves most time on against the next
     */
    static Verdict of(
            List<ModeSummary> ranked,
            Supplier<PairTests> tests,
            BooleanSupplier isArrivalMost,
            Supplier<Optional<SavedTime>> saved) {
        ModeSummary best = ranked.get(0);
        if (ranked.stream().allMatch(it -> it.delivered().value() == 0)) {
            return alone(Reason.NOTHING_ARRIVES, best);
        }
        return ranked.size() == 1 ? alone(Reason.ONLY_ONE_MODE, best) : between(tests.get(), isArrivalMost, saved);
    }

    private static Verdict alone(Reason reason, ModeSummary mode) {
        return new Verdict(
                reason,
                mode.causes().stream().max(Comparator.comparingDouble(CauseTime::meanSeconds)),
                Optional.empty(),
                Standing.ALONE,
                List.of(),
                Side.NEITHER,
                Side.NEITHER);
    }

    private static Verdict between(
            PairTests tests, BooleanSupplier isArrivalMost, Supplier<Optional<SavedTime>> saved) {
        boolean moreArrives = tests.ofDelivered() == Side.FIRST && isArrivalMost.getAsBoolean();
        return new Verdict(
                moreArrives ? Reason.MORE_ARRIVES : Reason.LESS_TIME,
                Optional.empty(),
                moreArrives ? Optional.empty() : saved.get(),
                standing(tests),
                tests.ofDeadlines(),
                tests.ofDelivered(),
                tests.ofFirst());
    }

    private static Standing standing(PairTests tests) {
        if (tests.isMixed()) {
            return Standing.MIXED;
        }
        if (tests.better() != Side.FIRST) {
            return Standing.OPEN;
        }
        return tests.isSurer() ? Standing.SURER : Standing.SOONER;
    }
}
