package org.ionohaul.nextrun;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ionohaul.learning.Learned;
import org.ionohaul.scenario.Mode;

/**
 * What to do next.
 *
 * @param question what was asked
 * @param learned what a log had taught; empty where there is none
 * @param found what candidates are worth; empty if the log was not fitted
 */
public record NextRun(NextQuestion question, Optional<Learned> learned, Optional<Valuation.Found> found) {
    /** Below this chance of a wrong choice nothing need be run. */
    static final double SURE = 0.01;

    /** What lowers the chance of a wrong choice by less is not worth the air time. */
    static final double LEAST = 0.01;

    /** What is left to do. */
    enum Verdict {
        /** The choice is as good as sure. */
        SURE_ALREADY,
        /** Nothing that fits into the time makes a difference. */
        NOTHING_TELLS,
        /** It can't be told beyond chance whether anything does. */
        OPEN,
        /** Something does. */
        RUN
    }

    private Valuation.Found valued() {
        return found.orElseThrow();
    }

    /** Returns whether there is anything to show. */
    public boolean isFitted() {
        return found.isPresent();
    }

    Verdict verdict() {
        if (valued().wrongNow().high() <= SURE) {
            return Verdict.SURE_ALREADY;
        }
        if (valued().worths().stream().allMatch(it -> it.fewerWrongInTime().high() < LEAST)) {
            return Verdict.NOTHING_TELLS;
        }
        boolean isSomethingSure = valued().worths().stream()
                .anyMatch(
                        it -> it.fewerWrong().low() > 0 || it.fewerWrongInTime().low() > 0);
        return isSomethingSure ? Verdict.RUN : Verdict.OPEN;
    }

    /** Returns whether no mode keeps the deadline often enough for a choice to matter. */
    boolean isHopeless() {
        return valued().chances().stream().allMatch(it -> it.value() < question.worthIt());
    }

    /** Returns the mode to choose as things are believed now. */
    Mode choice() {
        return question.understood().scenario().modes().get(valued().choice());
    }

    /** Returns the candidates that may be best per minute, the best first. */
    List<Worth> best() {
        return valued().worths().stream().filter(Worth::mayBeBest).toList();
    }

    /** Returns what lowers the chance of a wrong choice most within the time there is. */
    Worth mostInTime() {
        return valued().worths().stream()
                .max(Comparator.comparingDouble(it -> it.fewerWrongInTime().value()))
                .orElseThrow();
    }
}
