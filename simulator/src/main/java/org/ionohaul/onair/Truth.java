package org.ionohaul.onair;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.ionohaul.statistics.DiscordantPairs;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.statistics.PairedTimes;
import org.ionohaul.statistics.Proportion;

/**
 * Which mode is truly better where all begin at the same moment under the same skies, as far as many trials tell. A better
 * one is named only if it is ahead of every other beyond chance.
 *
 * @param figures for each mode, the median time in seconds (infinite if fewer than half get through) or, given a deadline, the
 *     chance to keep it; the intervals of medians hold together
 * @param leader the mode with the best figure, better beyond chance or not
 * @param isBetter whether it is better than every other beyond chance
 * @param lead by how much its figure is better than the next mode's: in seconds, or as a difference of chances; empty if
 *     neither median is reached
 * @param trials how many skies it rests on
 */
public record Truth(List<Estimate> figures, int leader, boolean isBetter, Optional<Estimate> lead, int trials) {
    private static final double ERROR_RATE = 1 - Estimate.CONFIDENCE;

    /** Copies the list. */
    public Truth {
        figures = List.copyOf(figures);
    }

    /** Returns the mode that is truly better; empty if it can't be told. */
    public OptionalInt better() {
        return isBetter ? OptionalInt.of(leader) : OptionalInt.empty();
    }

    /**
     * Judges modes.
     *
     * @param throughSeconds for each mode, the time of its run on each sky
     */
    static Truth of(Criterion criterion, double[][] throughSeconds) {
        return criterion.deadlineSeconds().isPresent()
                ? byDeadline(criterion, throughSeconds)
                : byMedian(throughSeconds);
    }

    /** The intervals hold together with the usual confidence, so that modes differ where theirs do not meet. */
    private static Truth byMedian(double[][] throughSeconds) {
        List<Estimate> medians = IntStream.range(0, throughSeconds.length)
                .mapToObj(it ->
                        OrderedSample.of(throughSeconds[it]).quantile(0.5, 1 - ERROR_RATE / throughSeconds.length))
                .toList();
        List<Integer> ranking =
                ranking(throughSeconds.length, it -> medians.get(it).value());
        Estimate best = medians.get(ranking.get(0));
        Estimate next = medians.get(ranking.get(1));
        return new Truth(
                medians,
                ranking.get(0),
                ranking.stream()
                        .skip(1)
                        .allMatch(it -> best.high() < medians.get(it).low()),
                Double.isInfinite(best.value()) ? Optional.empty() : Optional.of(lead(best, next)),
                throughSeconds[0].length);
    }

    private static Estimate lead(Estimate best, Estimate next) {
        return new Estimate(
                next.value() - best.value(),
                Double.isInfinite(best.high()) ? Double.NEGATIVE_INFINITY : next.low() - best.high(),
                next.high() - best.low());
    }

    private static Truth byDeadline(Criterion criterion, double[][] throughSeconds) {
        int modes = throughSeconds.length;
        int trials = throughSeconds[0].length;
        List<Proportion> kept = IntStream.range(0, modes)
                .mapToObj(it -> OrderedSample.of(throughSeconds[it])
                        .atMost(criterion.deadlineSeconds().orElseThrow()))
                .toList();
        List<Integer> ranking = ranking(modes, it -> -kept.get(it).share());
        int best = ranking.get(0);
        List<DiscordantPairs> others = ranking.stream()
                .skip(1)
                .map(it -> PairedTimes.of(throughSeconds[best], throughSeconds[it])
                        .deadlineKeptByOne(criterion.deadlineSeconds().orElseThrow()))
                .toList();
        double errorRate = ERROR_RATE / (modes - 1);
        return new Truth(
                kept.stream().map(it -> it.wilson(Estimate.CONFIDENCE)).toList(),
                best,
                others.stream().allMatch(it -> it.first() > it.second() && it.exactPValue() <= errorRate),
                Optional.of(others.get(0).shareDifference(trials, 1 - errorRate)),
                trials);
    }

    private static List<Integer> ranking(int modes, IntToDoubleFunction loss) {
        return IntStream.range(0, modes)
                .boxed()
                .sorted(Comparator.comparingDouble(loss::applyAsDouble))
                .toList();
    }
}
