package org.ionohaul.analysis;

import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.session.Cause;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.RunningMean;
import org.ionohaul.study.ModeTrials;
import org.ionohaul.study.TrialRow;

/**
 * What one mode saves most time on against another under the same skies, over the trials in which both deliver.
 *
 * @param cause the cause on which it spends most less, and how much less a trial, on the mean
 * @param leadSeconds by how much its sessions are shorter altogether, on the mean; below zero if they are longer
 * @param isMostOfLead whether the cause makes more than half of that, beyond chance
 * @param trials in how many trials both deliver
 */
public record SavedTime(CauseTime cause, double leadSeconds, boolean isMostOfLead, int trials) {
    private static final List<Cause> CAUSES = List.of(Cause.values());

    /** Of each cause, so that it holds for that which is picked as the largest. */
    private static final double CONFIDENCE = 1 - (1 - Estimate.CONFIDENCE) / CAUSES.size();

    /** Returns which part of the lead the cause makes; above 1 if some of it is lost elsewhere; needs a lead. */
    public double partOfLead() {
        return cause.meanSeconds() / leadSeconds;
    }

    /** Returns what the first saves most on; empty if both deliver in fewer than two trials, or nothing is saved. */
    static Optional<SavedTime> of(ModeTrials first, ModeTrials second) {
        Sums sums = new Sums();
        Iterator<TrialRow> others = second.rows().iterator();
        for (TrialRow row : first.rows()) {
            TrialRow other = others.next();
            if (row.deliveredNanos().isPresent() && other.deliveredNanos().isPresent()) {
                sums.add(row, other);
            }
        }
        return sums.largest();
    }

    /** What is saved over the trials so far. */
    private static final class Sums {
        private final RunningMean lead = new RunningMean();
        private final List<RunningMean> saved = means();
        private final List<RunningMean> aboveHalf = means();

        private static List<RunningMean> means() {
            return Stream.generate(RunningMean::new).limit(CAUSES.size()).toList();
        }

        void add(TrialRow row, TrialRow other) {
            double shorter = (other.endedNanos() - row.endedNanos()) / 1e9;
            lead.add(shorter);
            for (int i = 0; i < CAUSES.size(); i++) {
                double seconds = (other.budgetNanos(CAUSES.get(i)) - row.budgetNanos(CAUSES.get(i))) / 1e9;
                saved.get(i).add(seconds);
                aboveHalf.get(i).add(seconds - shorter / 2);
            }
        }

        Optional<SavedTime> largest() {
            return IntStream.range(0, lead.count() < 2 ? 0 : CAUSES.size())
                    .boxed()
                    .max(Comparator.comparingDouble(i -> saved.get(i).mean()))
                    .filter(i -> saved.get(i).mean() > 0)
                    .map(i -> new SavedTime(
                            new CauseTime(CAUSES.get(i), saved.get(i).mean()),
                            lead.mean(),
                            lead.mean() > 0 && aboveHalf.get(i).lowerBound(CONFIDENCE) > 0,
                            lead.count()));
        }
    }
}
