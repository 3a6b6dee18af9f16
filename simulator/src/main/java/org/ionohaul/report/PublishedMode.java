package org.ionohaul.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.ionohaul.analysis.CauseTime;
import org.ionohaul.analysis.DataRateShare;
import org.ionohaul.analysis.DeadlineChance;
import org.ionohaul.analysis.FileTimes;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.OutcomeShare;
import org.ionohaul.analysis.SafeTime;
import org.ionohaul.session.Cause;
import org.ionohaul.session.Ending;
import org.ionohaul.session.Outcome;
import org.ionohaul.statistics.Estimate;

/** How one mode did in a case, as {@code summary.json} has it. */
record PublishedMode(
        String mode,
        String title,
        int trials,
        Estimate deliveredShare,
        List<Quantile> completionQuantiles,
        List<Plan> plans,
        List<Deadline> deadlines,
        Estimate medianBytesPerMinute,
        Map<Outcome, Integer> outcomes,
        Map<Cause, Double> meanTimeBudgetSeconds,
        double meanElapsedSeconds,
        List<DataRateShare> dataRates,
        double meanLinksLost,
        Failures failures,
        List<File> fileCompletions) {
    /** A quantile of completion times. */
    record Quantile(double probability, Estimate completionSeconds) {
        static List<Quantile> all(Estimate tenth, Estimate median, Estimate ninth) {
            return List.of(new Quantile(0.1, tenth), new Quantile(0.5, median), new Quantile(0.9, ninth));
        }
    }

    /** A time to plan for. */
    record Plan(double share, OptionalDouble completionSeconds, int fewestTrials) {
        static Plan of(SafeTime plan) {
            return new Plan(plan.share(), plan.seconds(), plan.fewestTrials());
        }
    }

    /** The chance of keeping a deadline. */
    record Deadline(double deadlineSeconds, int kept, Estimate chance) {
        static Deadline of(DeadlineChance deadline) {
            return new Deadline(deadline.deadlineSeconds(), deadline.count().hits(), deadline.chance());
        }
    }

    /** How many trials failed, by the way they did. */
    record Failures(
            int neverLinked,
            int linksLost,
            int outOfPatience,
            int stillSending,
            int neverLinkedOutOfPatience,
            int neverLinkedAtHorizon,
            int deliveredWrong) {
        static Failures of(org.ionohaul.analysis.Failures failures) {
            return new Failures(
                    failures.neverLinked().hits(),
                    failures.linksLost().hits(),
                    failures.outOfPatience().hits(),
                    failures.stillSending().hits(),
                    failures.of(Ending.NEVER_LINKED_OUT_OF_PATIENCE).hits(),
                    failures.of(Ending.NEVER_LINKED_AT_HORIZON).hits(),
                    failures.deliveredWrong().hits());
        }
    }

    /** One file of the transfer. */
    record File(String file, Estimate deliveredShare, List<Quantile> completionQuantiles) {
        static File of(FileTimes times) {
            return new File(
                    times.file().name(),
                    times.delivered(),
                    Quantile.all(times.tenthSeconds(), times.medianSeconds(), times.ninthSeconds()));
        }
    }

    static PublishedMode of(ModeSummary mode) {
        return new PublishedMode(
                mode.mode().name(),
                mode.mode().title(),
                mode.trials(),
                mode.delivered(),
                Quantile.all(mode.tenthSeconds(), mode.medianSeconds(), mode.ninthSeconds()),
                List.of(Plan.of(mode.ninthPlan()), Plan.of(mode.plan())),
                mode.deadlines().stream().map(Deadline::of).toList(),
                mode.medianBytesPerMinute(),
                outcomes(mode.outcomes()),
                causes(mode.causes()),
                mode.meanElapsedSeconds(),
                mode.dataRates(),
                mode.meanLinksLost(),
                Failures.of(mode.failures()),
                mode.files().stream().map(File::of).toList());
    }

    private static Map<Outcome, Integer> outcomes(List<OutcomeShare> shares) {
        Map<Outcome, Integer> counts = new LinkedHashMap<>();
        shares.forEach(it -> counts.put(it.outcome(), it.count().hits()));
        return counts;
    }

    private static Map<Cause, Double> causes(List<CauseTime> times) {
        Map<Cause, Double> seconds = new LinkedHashMap<>();
        times.forEach(it -> seconds.put(it.cause(), it.meanSeconds()));
        return seconds;
    }
}
