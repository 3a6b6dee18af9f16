package org.ionohaul.analysis;

import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.Outcome;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.statistics.Proportion;

/**
 * What the trials of one mode in one case come to. All intervals have confidence {@link Estimate#CONFIDENCE}.
 *
 * @param mode the mode
 * @param trials how many trials
 * @param outcomes how sessions ended, one entry an outcome
 * @param delivered share of trials in which everything was delivered
 * @param tenthSeconds the completion time that 1 of 10 trials keeps, in seconds; infinite if not reached
 * @param medianSeconds the completion time that 5 of 10 trials keep
 * @param ninthSeconds the completion time that 9 of 10 trials keep
 * @param ninthPlan the time to plan for if 9 of 10 trials are to keep it
 * @param plan the time to plan for if 19 of 20 trials are to keep it
 * @param deadlines chance of each deadline
 * @param medianBytesPerMinute bytes on the air (after any compression, repeats not counted) a minute from pressing send to
 *     delivered, over all trials; 0 where never
 * @param causes mean time budget, one entry a cause
 * @param meanElapsedSeconds mean time from pressing send to the session's end or the horizon: the causes' sum
 * @param dataRates use of the data rates, data rate 1 first
 * @param meanLinksLost mean number of lost links a trial
 * @param failures how those sessions failed that did not deliver
 * @param files when each file is through, in the order sent
 */
public record ModeSummary(
        Mode mode,
        int trials,
        List<OutcomeShare> outcomes,
        Estimate delivered,
        Estimate tenthSeconds,
        Estimate medianSeconds,
        Estimate ninthSeconds,
        SafeTime ninthPlan,
        SafeTime plan,
        List<DeadlineChance> deadlines,
        Estimate medianBytesPerMinute,
        List<CauseTime> causes,
        double meanElapsedSeconds,
        List<DataRateShare> dataRates,
        double meanLinksLost,
        Failures failures,
        List<FileTimes> files) {
    /** What is planned for: of twenty trials, the slowest but one. */
    private static final double PLANNED = 0.95;

    /** Copies the lists. */
    public ModeSummary {
        outcomes = List.copyOf(outcomes);
        deadlines = List.copyOf(deadlines);
        causes = List.copyOf(causes);
        dataRates = List.copyOf(dataRates);
        files = List.copyOf(files);
    }

    /** Returns how often its sessions ended in one way. */
    public Proportion outcome(Outcome outcome) {
        return outcomes.stream()
                .filter(it -> it.outcome() == outcome)
                .map(OutcomeShare::count)
                .findFirst()
                .orElseThrow();
    }

    /**
     * Summarises the trials of a mode.
     *
     * @param transfer what was sent
     * @param modes among how many modes this is one
     */
    static ModeSummary of(Transfer transfer, Mode mode, ModeTally tally, int modes) {
        OrderedSample completion = OrderedSample.of(tally.completionSeconds());
        Estimate median = notNegative(completion, 0.5);
        return new ModeSummary(
                mode,
                tally.trials(),
                tally.outcomes(),
                completion.atMost(Double.MAX_VALUE).wilson(Estimate.CONFIDENCE),
                notNegative(completion, 0.1),
                median,
                notNegative(completion, 0.9),
                SafeTime.of(0.9, completion, modes),
                SafeTime.of(PLANNED, completion, modes),
                deadlines(transfer, completion, tally),
                pace(transfer.totalBytes(), median),
                tally.causes(),
                tally.meanElapsedSeconds(),
                tally.dataRates(),
                tally.meanLinksLost(),
                tally.failures(),
                IntStream.range(0, transfer.files().size())
                        .mapToObj(file -> fileTimes(transfer.files().get(file), tally.fileSeconds(file)))
                        .toList());
    }

    /** Returns on how many trials everything was delivered. */
    Proportion deliveredCount() {
        return new Proportion(Math.toIntExact(Math.round(trials * delivered.value())), trials);
    }

    /** Returns the mean over deadlines of the chance to keep them; 1 if there are none. */
    double meanDeadlineShare() {
        return deadlines.stream()
                .mapToDouble(it -> it.chance().value())
                .average()
                .orElse(1);
    }

    private static FileTimes fileTimes(PayloadFile file, double[] seconds) {
        OrderedSample delivered = OrderedSample.of(seconds);
        return new FileTimes(
                file,
                delivered.atMost(Double.MAX_VALUE).wilson(Estimate.CONFIDENCE),
                notNegative(delivered, 0.1),
                notNegative(delivered, 0.5),
                notNegative(delivered, 0.9));
    }

    /** Returns a quantile of times or paces; where the sample sets no lower limit, zero does. */
    static Estimate notNegative(OrderedSample sample, double probability) {
        Estimate found = sample.quantile(probability, Estimate.CONFIDENCE);
        return new Estimate(found.value(), Math.max(0, found.low()), found.high());
    }

    private static List<DeadlineChance> deadlines(Transfer transfer, OrderedSample completion, ModeTally tally) {
        List<Double> deadlines = transfer.deadlinesSeconds();
        return IntStream.range(0, deadlines.size())
                .mapToObj(i -> deadline(deadlines.get(i), completion.atMost(deadlines.get(i)), tally.limits(i)))
                .toList();
    }

    private static DeadlineChance deadline(double seconds, Proportion kept, Limits limits) {
        return new DeadlineChance(seconds, kept, kept.wilson(Estimate.CONFIDENCE), limits);
    }

    private static Estimate pace(long bytes, Estimate seconds) {
        double byteSeconds = bytes * 60.0;
        return new Estimate(byteSeconds / seconds.value(), byteSeconds / seconds.high(), byteSeconds / seconds.low());
    }
}
