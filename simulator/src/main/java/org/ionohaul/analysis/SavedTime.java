package org.ionohaul.analysis;

import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ionohaul.session.Cause;
import org.ionohaul.study.ModeTrials;
import org.ionohaul.study.TrialRow;

/** What one mode saves against another under the same skies. */
final class SavedTime {
    private static final List<Cause> CAUSES = List.of(Cause.values());

    private SavedTime() {}

    /**
     * Returns the cause on which the first spends most less than the second, with how much less a trial, mean over the
     * trials in which both deliver; empty if there are none, or nothing is saved.
     */
    static Optional<CauseTime> of(ModeTrials first, ModeTrials second) {
        long[] sums = new long[CAUSES.size()];
        long both = 0;
        Iterator<TrialRow> others = second.rows().iterator();
        for (TrialRow row : first.rows()) {
            TrialRow other = others.next();
            if (row.deliveredNanos().isPresent() && other.deliveredNanos().isPresent()) {
                both++;
                for (int i = 0; i < sums.length; i++) {
                    long saved = other.budgetNanos(CAUSES.get(i)) - row.budgetNanos(CAUSES.get(i));
                    sums[i] = Math.addExact(sums[i], saved);
                }
            }
        }
        long trials = Math.max(1, both);
        return IntStream.range(0, sums.length)
                .mapToObj(i -> new CauseTime(CAUSES.get(i), sums[i] / 1e9 / trials))
                .max(Comparator.comparingDouble(CauseTime::meanSeconds))
                .filter(it -> it.meanSeconds() > 0);
    }
}
