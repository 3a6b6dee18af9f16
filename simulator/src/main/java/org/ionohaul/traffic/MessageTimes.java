package org.ionohaul.traffic;

import java.util.Arrays;
import java.util.List;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.trial.NetTrial;

/**
 * How long the messages of one kind take from written to delivered, over all trials.
 *
 * <p>The share that is through within a time counts only messages that were written so long before the end that they could be
 * watched for all of it: those still waiting at the end are neither left out nor taken for late.
 */
final class MessageTimes {
    /** Times are told on a grid that is finer for short ones. */
    private static final int STEPS = 1500;

    private final double endSeconds;
    private final double warmUpSeconds;
    private final double[][] writtenSeconds;
    private final double[][] tookSeconds;

    /**
     * Gathers the times.
     *
     * @param trials the messages of this kind, by trial
     * @param warmUpSeconds from when on messages count
     * @param endSeconds until when a trial is watched
     */
    MessageTimes(List<List<NetTrial.Message>> trials, double warmUpSeconds, double endSeconds) {
        this.warmUpSeconds = warmUpSeconds;
        this.endSeconds = endSeconds;
        writtenSeconds = trials.stream()
                .map(it -> it.stream()
                        .mapToDouble(each -> each.writtenNanos() * 1e-9)
                        .toArray())
                .toArray(double[][]::new);
        tookSeconds = trials.stream()
                .map(it -> it.stream().mapToDouble(NetTrial.Message::seconds).toArray())
                .toArray(double[][]::new);
    }

    /** Returns the share that is through within a time, in seconds. */
    RatioOfSums within(double seconds) {
        double[] kept = new double[tookSeconds.length];
        double[] watched = new double[tookSeconds.length];
        for (int trial = 0; trial < kept.length; trial++) {
            for (int i = 0; i < tookSeconds[trial].length; i++) {
                double written = writtenSeconds[trial][i];
                if (written >= warmUpSeconds && written + seconds <= endSeconds) {
                    watched[trial]++;
                    kept[trial] += tookSeconds[trial][i] <= seconds ? 1 : 0;
                }
            }
        }
        return new RatioOfSums(kept, watched);
    }

    /**
     * Returns the time within which a share of the messages is through, in seconds, infinite if it is not reached while they
     * are watched; its ends are where the interval of the share crosses (Woodruff, "Confidence intervals for medians and
     * other position measures", JASA 47, 1952).
     */
    Estimate quantile(double share) {
        double value = Double.POSITIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (int step = 1; step <= STEPS && high == Double.POSITIVE_INFINITY; step++) {
            double seconds = (endSeconds - warmUpSeconds) * step * step / ((double) STEPS * STEPS);
            RatioOfSums through = within(seconds);
            if (!through.exists()) {
                break;
            }
            Estimate estimate = through.within(0, 1);
            low = low < Double.POSITIVE_INFINITY || estimate.high() < share ? low : seconds;
            value = value < Double.POSITIVE_INFINITY || estimate.value() < share ? value : seconds;
            high = estimate.low() < share ? high : seconds;
        }
        return new Estimate(value, low, high);
    }

    /** Returns how many were written a trial, of those that count. */
    double writtenPerTrial() {
        return Arrays.stream(writtenSeconds)
                .mapToLong(it ->
                        Arrays.stream(it).filter(at -> at >= warmUpSeconds).count())
                .average()
                .orElse(0);
    }
}
