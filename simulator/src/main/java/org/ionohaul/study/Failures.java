package org.ionohaul.study;

import java.util.List;
import java.util.function.Predicate;
import org.ionohaul.session.Cause;
import org.ionohaul.session.Outcome;
import org.ionohaul.statistics.Proportion;

/**
 * How sessions failed that did not deliver everything; each belongs to the first of these that is true of it.
 *
 * @param neverLinked no call was ever answered, whatever ended the session
 * @param linksLost it had a link, lost it, and used up its redials
 * @param outOfPatience the operator of the station that dials broke off
 * @param stillSending it was still running at the horizon
 */
public record Failures(
        Proportion neverLinked, Proportion linksLost, Proportion outOfPatience, Proportion stillSending) {
    /**
     * Counts the failures among trials.
     *
     * @param patienceSeconds how long the operator of the station that dials waits; infinite if for ever
     */
    static Failures of(List<TrialRow> rows, double patienceSeconds) {
        Predicate<TrialRow> neverLinked = row -> row.budgetNanos(Cause.INTRODUCTIONS) == 0;
        Predicate<TrialRow> running = row -> row.outcome() == Outcome.RUNNING;
        Predicate<TrialRow> outOfPatience = row -> row.endedNanos() >= Math.round(1e9 * patienceSeconds);
        List<TrialRow> failed =
                rows.stream().filter(row -> row.deliveredNanos().isEmpty()).toList();
        int never = count(failed, neverLinked);
        int still = count(failed, neverLinked.negate().and(running));
        int impatient = count(failed, neverLinked.negate().and(running.negate()).and(outOfPatience));
        return new Failures(
                new Proportion(never, rows.size()),
                new Proportion(failed.size() - never - still - impatient, rows.size()),
                new Proportion(impatient, rows.size()),
                new Proportion(still, rows.size()));
    }

    private static int count(List<TrialRow> rows, Predicate<TrialRow> isSo) {
        return (int) rows.stream().filter(isSo).count();
    }
}
