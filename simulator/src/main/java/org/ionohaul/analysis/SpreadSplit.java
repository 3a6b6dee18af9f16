package org.ionohaul.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.statistics.ExplainedSpread;
import org.ionohaul.study.ModeTrials;
import org.ionohaul.trial.UncertainDraws;

/**
 * Luck against ignorance: how much of the spread of a mode's completion times comes from fading and other chance, which
 * more trials only describe better, and how much from each input that is not known, which a measurement would cure.
 *
 * <p>Spread is the variance of the trials' ranks by completion time, those that never arrive last. What only a
 * combination of unknown inputs explains counts as luck; so does the share of an input that could be chance, since such
 * shares are never below zero and many of them together would take too much from luck.
 *
 * @param luckShare share of the spread that no single unknown input explains beyond chance, from 0 to 1
 * @param inputs share of each unknown input, in alphabetical order of keys
 */
public record SpreadSplit(double luckShare, List<InputShare> inputs) {
    /** An input whose share could be chance is not worth a trip with an instrument. */
    private static final double SIGNIFICANCE = 0.01;

    /**
     * The part of one unknown input.
     *
     * @param key its scenario key
     * @param share share of the spread that it explains, from 0 to 1
     * @param pValue chance of so large a share if it did not matter
     */
    public record InputShare(String key, double share, double pValue) {
        /** Returns whether the share is more than chance would give. */
        public boolean isBeyondChance() {
            return pValue < SIGNIFICANCE;
        }
    }

    /** Copies the list. */
    public SpreadSplit {
        inputs = List.copyOf(inputs);
    }

    /**
     * Splits the spread of a mode's trials; empty if every input is known or there are too few trials.
     *
     * @param scenario the scenario of the trials
     */
    public static Optional<SpreadSplit> of(Scenario scenario, ModeTrials trials) {
        List<String> keys = scenario.sky().uncertainKeys();
        if (keys.isEmpty() || trials.rows().size() < ExplainedSpread.FEWEST_TRIALS) {
            return Optional.empty();
        }
        double[] seconds = trials.completionSeconds();
        List<UncertainDraws> draws = trials.rows().stream()
                .map(row -> UncertainDraws.of(scenario.seed(), row.trial()))
                .toList();
        List<InputShare> inputs = keys.stream()
                .map(key -> input(key, ExplainedSpread.of(probabilities(draws, key), seconds)))
                .toList();
        double known = inputs.stream()
                .filter(InputShare::isBeyondChance)
                .mapToDouble(InputShare::share)
                .sum();
        return Optional.of(new SpreadSplit(Math.max(0, 1 - known), inputs));
    }

    /** Returns the key whose measurement would sharpen the forecast most; empty if none matters beyond chance. */
    public Optional<String> worthMeasuring() {
        return inputs.stream()
                .filter(InputShare::isBeyondChance)
                .max(Comparator.comparingDouble(InputShare::share))
                .map(InputShare::key);
    }

    private static InputShare input(String key, ExplainedSpread spread) {
        return new InputShare(key, spread.share(), spread.pValue());
    }

    private static double[] probabilities(List<UncertainDraws> draws, String key) {
        return draws.stream().mapToDouble(it -> it.probability(key)).toArray();
    }
}
