package org.ionohaul.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.ionohaul.session.Cause;
import org.ionohaul.session.DataRateUse;
import org.ionohaul.session.Ending;
import org.ionohaul.session.Outcome;
import org.ionohaul.statistics.Proportion;
import org.ionohaul.study.ModeTrials;
import org.ionohaul.study.TrialRow;

/** What a summary needs of one mode's trials, taken in a single pass: rows may have to be unpacked each time. */
final class ModeTally {
    private static final List<Cause> CAUSES = List.of(Cause.values());

    private final int trials;
    private final double[] completionSeconds;
    private final double[][] fileSeconds;
    private final Map<Outcome, Integer> outcomes = new EnumMap<>(Outcome.class);
    private final Map<Ending, Integer> failures = new EnumMap<>(Ending.class);
    private final long[] causeNanos = new long[CAUSES.size()];
    private final List<DataRateSum> dataRates;
    private long endedNanos;
    private long linksLost;

    /** Use of one data rate over all trials so far. */
    private static final class DataRateSum {
        private long airtimeNanos;
        private long framesSent;
        private long framesLost;

        private void add(DataRateUse use) {
            airtimeNanos = Math.addExact(airtimeNanos, use.airtimeNanos());
            framesSent += use.framesSent();
            framesLost += use.framesLost();
        }
    }

    /**
     * Goes through the trials of a mode, at least one.
     *
     * @param files how many files were sent
     */
    ModeTally(List<TrialRow> rows, int files) {
        trials = rows.size();
        completionSeconds = new double[trials];
        fileSeconds = new double[files][trials];
        dataRates = new ArrayList<>();
        int trial = 0;
        for (TrialRow row : rows) {
            add(row, trial++);
        }
    }

    private void add(TrialRow row, int trial) {
        completionSeconds[trial] = row.deliveredSeconds();
        for (int file = 0; file < fileSeconds.length; file++) {
            fileSeconds[file][trial] = ModeTrials.fileSeconds(row, file);
        }
        outcomes.merge(row.outcome(), 1, Integer::sum);
        if (row.deliveredNanos().isEmpty() && row.outcome() != Outcome.DELIVERED_WRONG) {
            failures.merge(row.ending(), 1, Integer::sum);
        }
        for (int cause = 0; cause < causeNanos.length; cause++) {
            causeNanos[cause] = Math.addExact(causeNanos[cause], row.budgetNanos(CAUSES.get(cause)));
        }
        endedNanos = Math.addExact(endedNanos, row.endedNanos());
        linksLost += row.linksLost();
        for (int dataRate = 1; dataRate <= row.dataRates(); dataRate++) {
            if (dataRates.size() < dataRate) {
                dataRates.add(new DataRateSum());
            }
            dataRates.get(dataRate - 1).add(row.dataRate(dataRate));
        }
    }

    int trials() {
        return trials;
    }

    /** Returns each trial's completion time, infinite if it never came; not to be changed. */
    double[] completionSeconds() {
        return completionSeconds;
    }

    /** Returns when each trial's receiver held a file, from 0, infinite if never; not to be changed. */
    double[] fileSeconds(int file) {
        return fileSeconds[file];
    }

    List<OutcomeShare> outcomes() {
        return Arrays.stream(Outcome.values())
                .map(outcome -> new OutcomeShare(outcome, new Proportion(outcomes.getOrDefault(outcome, 0), trials)))
                .toList();
    }

    Failures failures() {
        return new Failures(trials, failures, outcomes.getOrDefault(Outcome.DELIVERED_WRONG, 0));
    }

    List<CauseTime> causes() {
        return IntStream.range(0, causeNanos.length)
                .mapToObj(i -> new CauseTime(CAUSES.get(i), causeNanos[i] / 1e9 / trials))
                .toList();
    }

    double meanElapsedSeconds() {
        return endedNanos / 1e9 / trials;
    }

    double meanLinksLost() {
        return (double) linksLost / trials;
    }

    List<DataRateShare> dataRates() {
        double airtime = dataRates.stream().mapToDouble(it -> it.airtimeNanos).sum();
        return IntStream.range(0, dataRates.size())
                .mapToObj(i -> new DataRateShare(
                        i + 1,
                        airtime > 0 ? dataRates.get(i).airtimeNanos / airtime : 0,
                        dataRates.get(i).framesSent,
                        dataRates.get(i).framesLost))
                .toList();
    }
}
