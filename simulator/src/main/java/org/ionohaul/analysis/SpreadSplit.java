package org.ionohaul.analysis;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.ExplainedSpread;
import org.ionohaul.statistics.Jackknifed;
import org.ionohaul.study.ModeTrials;
import org.ionohaul.trial.UncertainDraws;

/**
 * Luck against ignorance: how much of the spread of a mode's completion times comes from each input that is not known,
 * which a measurement would cure, and how much is left, which more trials only describe better.
 *
 * <p>Spread is the variance of the trials' ranks by completion time, those that never arrive last. What is left is luck
 * and, where several inputs are unknown, what only combinations of them explain. What a measurement is worth is judged on
 * what the user asks: by how much it would move the chances of the deadlines. All intervals have confidence {@link
 * Estimate#CONFIDENCE}.
 *
 * @param rest share of the spread that no single unknown input explains, from 0 to 1
 * @param inputs what goes with each unknown input, in alphabetical order of keys
 * @param worthMeasuring keys of the input that moves the deadlines' chances most if it is measured or, without deadlines,
 *     explains most of the spread, and of those that can't be told apart from it, that first; empty if none does so beyond
 *     chance
 */
public record SpreadSplit(Estimate rest, List<InputShare> inputs, List<String> worthMeasuring) {
    /** An input whose share could be chance is not worth a trip with an instrument. */
    private static final double SIGNIFICANCE = 0.01;

    /** With fewer trials the groups into which they are cut are so coarse that they hide a part of any share. */
    private static final int FEWEST_TRIALS = 100;

    private static final double LEAST_NAMED = 0.02;
    private static final int MOST_NAMED = 3;

    /**
     * The part of one unknown input.
     *
     * @param key its scenario key
     * @param share share of the spread that it explains, from 0 to 1
     * @param pValue chance of so large a share if it did not matter
     * @param swings for each deadline, by how much knowing the input would move its chance either way: the standard
     *     deviation of the chance given the input, from 0 to 0.5
     */
    public record InputShare(String key, Estimate share, double pValue, List<Estimate> swings) {
        /** Copies the list. */
        public InputShare {
            swings = List.copyOf(swings);
        }

        /** Returns whether the share is more than chance would give. */
        public boolean isBeyondChance() {
            return pValue < SIGNIFICANCE;
        }

        /** Returns the deadlines, by their place, whose chances it is seen to move at all: not those kept always or never. */
        public List<Integer> movedDeadlines() {
            return IntStream.range(0, swings.size())
                    .filter(i -> swings.get(i).high() > 0)
                    .boxed()
                    .toList();
        }
    }

    /** Copies the lists. */
    public SpreadSplit {
        inputs = List.copyOf(inputs);
        worthMeasuring = List.copyOf(worthMeasuring);
    }

    /**
     * Splits the spread of a mode's trials; empty if every input is known, there is no spread or there are too few trials.
     *
     * @param scenario the scenario of the trials
     * @param deadlinesSeconds the deadlines of what was sent
     */
    public static Optional<SpreadSplit> of(Scenario scenario, List<Double> deadlinesSeconds, ModeTrials trials) {
        List<String> keys = scenario.sky().uncertainKeys();
        if (keys.isEmpty() || trials.rows().size() < FEWEST_TRIALS) {
            return Optional.empty();
        }
        double[] seconds = trials.completionSeconds();
        if (Arrays.stream(seconds).allMatch(it -> it == seconds[0])) {
            return Optional.empty();
        }
        List<UncertainDraws> draws = trials.rows().stream()
                .map(row -> UncertainDraws.of(scenario.seed(), row.trial()))
                .toList();
        List<Worth> worths = keys.stream()
                .map(key -> Worth.of(
                        key,
                        draws.stream().mapToDouble(it -> it.probability(key)).toArray(),
                        seconds,
                        deadlinesSeconds))
                .toList();
        Jackknifed known =
                worths.stream().map(it -> it.ofTimes().share()).reduce(Jackknifed.constant(0), Jackknifed::plus);
        return Optional.of(new SpreadSplit(
                Jackknifed.constant(1).minus(known).within(0, 1, Estimate.CONFIDENCE),
                worths.stream().map(Worth::share).toList(),
                best(worths)));
    }

    /** Returns whether what is left may be the doing of combinations of inputs as well as luck. */
    public boolean mayCombine() {
        return inputs.size() > 1;
    }

    /** Returns the inputs worth a word, the largest share first: those beyond chance that explain more than a trifle. */
    public List<InputShare> named() {
        return inputs.stream()
                .filter(it -> it.share().value() >= LEAST_NAMED && it.isBeyondChance())
                .sorted(Comparator.comparingDouble((InputShare it) -> it.share().value())
                        .reversed())
                .limit(MOST_NAMED)
                .toList();
    }

    /** Returns the first of those worth measuring; empty if none is. */
    public Optional<InputShare> mostWorthMeasuring() {
        return worthMeasuring.stream()
                .findFirst()
                .flatMap(key ->
                        inputs.stream().filter(it -> it.key().equals(key)).findFirst());
    }

    /** Returns by how much a measurement may move the chance of a deadline at most; empty without deadlines. */
    public OptionalDouble mostSwing() {
        return inputs.stream()
                .flatMap(it -> it.swings().stream())
                .mapToDouble(Estimate::high)
                .max();
    }

    private static List<String> best(List<Worth> worths) {
        List<Worth> ranked = worths.stream()
                .filter(Worth::isBeyondChance)
                .sorted(Comparator.comparingDouble((Worth it) -> it.value().value())
                        .reversed())
                .toList();
        return ranked.stream()
                .filter(it -> !isLess(it, ranked.get(0)))
                .map(Worth::key)
                .toList();
    }

    private static boolean isLess(Worth worth, Worth best) {
        return best.value()
                        .minus(worth.value())
                        .within(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Estimate.CONFIDENCE)
                        .low()
                > 0;
    }

    /** What one input explains of the times, and of each deadline being kept or not. */
    private record Worth(String key, ExplainedSpread ofTimes, List<Kept> deadlines) {
        static Worth of(String key, double[] input, double[] seconds, List<Double> deadlinesSeconds) {
            return new Worth(
                    key,
                    ExplainedSpread.of(input, seconds),
                    deadlinesSeconds.stream()
                            .map(it -> Kept.of(input, seconds, it))
                            .toList());
        }

        InputShare share() {
            return new InputShare(
                    key,
                    ofTimes.share().within(0, 1, Estimate.CONFIDENCE),
                    ofTimes.pValue(),
                    deadlines.stream().map(Kept::swing).toList());
        }

        boolean isBeyondChance() {
            return deadlines.isEmpty()
                    ? ofTimes.pValue() < SIGNIFICANCE
                    : deadlines.stream().anyMatch(it -> it.pValue() < SIGNIFICANCE / deadlines.size());
        }

        Jackknifed value() {
            return deadlines.stream()
                    .map(Kept::variance)
                    .reduce(Jackknifed::plus)
                    .orElse(ofTimes.share());
        }
    }

    /**
     * What one input explains of a deadline being kept or not.
     *
     * @param variance variance of the chance given the input
     */
    private record Kept(Jackknifed variance, double pValue) {
        private static final double MOST_VARIANCE = 0.25;

        static Kept of(double[] input, double[] seconds, double deadline) {
            double[] missed = IntStream.range(0, seconds.length)
                    .mapToDouble(i -> seconds[i] <= deadline ? 0 : 1)
                    .toArray();
            ExplainedSpread spread = ExplainedSpread.of(input, missed);
            Jackknifed share = Jackknifed.mean(missed);
            return new Kept(
                    spread.share().times(share).times(Jackknifed.constant(1).minus(share)), spread.pValue());
        }

        Estimate swing() {
            Estimate cut = variance.within(0, MOST_VARIANCE, Estimate.CONFIDENCE);
            return new Estimate(Math.sqrt(cut.value()), Math.sqrt(cut.low()), Math.sqrt(cut.high()));
        }
    }
}
