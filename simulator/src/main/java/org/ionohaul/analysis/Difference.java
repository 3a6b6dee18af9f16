package org.ionohaul.analysis;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.scenario.Direction;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.ExplainedSpread;
import org.ionohaul.statistics.PairedTimes;
import org.ionohaul.trial.EndSky;
import org.ionohaul.trial.TrialSky;

/**
 * When two modes differ most: which measure of the sky goes most with the first's lead, and how the lead differs between
 * trials by it.
 *
 * @param isAtReceiver whether the measure is taken at the station that wants the files, else at the one that holds them
 * @param measure which
 * @param watchedSeconds the time over which it is measured, from pressing send
 * @param share share of the spread of leads that goes with it, from 0 to 1, see {@link ExplainedSpread}
 * @param pValue chance of so large a share if it did not matter, before the correction for the number of measures tried
 * @param most the fifth of trials, sorted by the measure, in which the two differ most
 * @param least the fifth in which they differ least
 */
public record Difference(
        boolean isAtReceiver,
        SkyMeasure measure,
        double watchedSeconds,
        double share,
        double pValue,
        Fifth most,
        Fifth least) {
    private static final int FIFTHS = 5;

    /** Of each fifth, so that the intervals hold for those that are picked as differing most and least. */
    private static final double CONFIDENCE = 1 - (1 - Estimate.CONFIDENCE) / FIFTHS;

    /** The fewest trials of which anything is said: ten a fifth. */
    static final int FEWEST_TRIALS = 10 * FIFTHS;

    /** All measures at both ends together may name one falsely on 1 of 100 pairs. */
    private static final double SIGNIFICANCE = 0.01 / (2 * SkyMeasure.values().length);

    /**
     * A fifth of the trials.
     *
     * @param place 0 for the trials with the lowest values of the measure, 4 for those with the highest
     * @param from lowest value in it
     * @param to highest value in it
     * @param trials how many trials it holds
     * @param firstBefore share of them on which the first is through before the second, from 0 to 1
     * @param secondBefore share on which the second is through before the first
     * @param medianLeadSeconds median of the first's lead, as in {@link Comparison}
     */
    public record Fifth(
            int place,
            double from,
            double to,
            int trials,
            Estimate firstBefore,
            Estimate secondBefore,
            Estimate medianLeadSeconds) {
        /** Returns the share of its trials on which neither is first, from 0 to 1. */
        public double unledShare() {
            return 1 - firstBefore.value() - secondBefore.value();
        }
    }

    /**
     * Looks for what of the sky tells when two modes differ.
     *
     * @param direction which way the files go
     * @param watchedSeconds how long each sky was watched, from pressing send
     * @param skies an entry a trial, at least {@link #FEWEST_TRIALS}
     * @param first when the first mode delivers, in seconds, infinite if never, an entry a trial
     * @param second the same of the second
     * @return empty if nothing does beyond chance
     */
    static Optional<Difference> of(
            Direction direction, double watchedSeconds, List<TrialSky> skies, double[] first, double[] second) {
        double[] leads = IntStream.range(0, first.length)
                .mapToDouble(i -> first[i] == second[i] ? 0 : second[i] - first[i])
                .toArray();
        return Stream.of(true, false)
                .flatMap(isAtReceiver -> Arrays.stream(SkyMeasure.values()).map(measure -> {
                    double[] values = values(direction, isAtReceiver, measure, skies);
                    ExplainedSpread spread = ExplainedSpread.of(values, leads);
                    Fifth[] fifths = fifths(values, first, second);
                    return new Difference(
                            isAtReceiver,
                            measure,
                            watchedSeconds,
                            Math.max(0, spread.share().value()),
                            spread.pValue(),
                            fifths[FIFTHS - 1],
                            fifths[0]);
                }))
                .filter(it -> it.pValue() < SIGNIFICANCE)
                .max(Comparator.comparingDouble(Difference::share));
    }

    private static double[] values(
            Direction direction, boolean isAtReceiver, SkyMeasure measure, List<TrialSky> skies) {
        boolean isAtFar = isAtReceiver == (direction == Direction.UPLOAD);
        return skies.stream()
                .map(sky -> isAtFar ? sky.far() : sky.near())
                .mapToDouble((EndSky sky) -> measure.of(sky))
                .toArray();
    }

    /** Returns the fifths by how much the two differ in them, least first. */
    private static Fifth[] fifths(double[] values, double[] first, double[] second) {
        int[] order = IntStream.range(0, values.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> values[i]))
                .mapToInt(i -> i)
                .toArray();
        return IntStream.range(0, FIFTHS)
                .mapToObj(place -> fifth(
                        place,
                        Arrays.copyOfRange(order, order.length * place / FIFTHS, order.length * (place + 1) / FIFTHS),
                        values,
                        first,
                        second))
                .sorted(Comparator.comparingDouble(
                                (Fifth it) -> Math.abs(it.medianLeadSeconds().value()))
                        .thenComparingDouble(it -> Math.abs(
                                it.firstBefore().value() - it.secondBefore().value()))
                        // Where several are alike, the outermost is what tells them from the others.
                        .thenComparingInt(it -> Math.abs(it.place() - FIFTHS / 2)))
                .toArray(Fifth[]::new);
    }

    private static Fifth fifth(int place, int[] trials, double[] values, double[] first, double[] second) {
        PairedTimes times = PairedTimes.of(
                IntStream.of(trials).mapToDouble(i -> first[i]).toArray(),
                IntStream.of(trials).mapToDouble(i -> second[i]).toArray());
        return new Fifth(
                place,
                values[trials[0]],
                values[trials[trials.length - 1]],
                trials.length,
                times.firstBefore().wilson(CONFIDENCE),
                times.secondBefore().wilson(CONFIDENCE),
                times.lead(0.5, CONFIDENCE));
    }
}
