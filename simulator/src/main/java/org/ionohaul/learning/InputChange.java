package org.ionohaul.learning;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.ionohaul.scenario.WrittenInput;
import org.ionohaul.statistics.OrderedSample;

/**
 * What became of an input.
 *
 * @param unknown the input
 * @param written it in the numbers of its scenario; empty if it is not written in plain quantities
 * @param probabilities equally likely draws of what is believed now, by their probability before
 * @param shift by how much its mean moved, in standard deviations of before
 * @param widthLeft its standard deviation over that of before
 */
record InputChange(
        Unknown unknown, Optional<WrittenInput> written, OrderedSample probabilities, double shift, double widthLeft) {
    /** What keeps more of its width, and its place, was hardly told anything of. */
    private static final double UNTOUCHED_WIDTH = 0.9;

    /** So many probabilities stand for what was thought possible before. */
    private static final int BEFORE = 999;

    private static final double UNTOUCHED_SHIFT = 0.3;

    static InputChange of(ScenarioModel model, int unknown, Belief belief) {
        DoubleUnaryOperator scale = score -> model.straightened(unknown, score);
        double[] now = belief.draws().stream().mapToDouble(it -> it[unknown]).toArray();
        double[] before = new double[BEFORE];
        for (int i = 0; i < before.length; i++) {
            before[i] = Scores.ofProbability((i + 0.5) / before.length);
        }
        double[] moments = moments(before, scale);
        double[] nowMoments = moments(now, scale);
        return new InputChange(
                model.list().get(unknown),
                model.input(unknown),
                OrderedSample.of(Arrays.stream(now).map(Scores::probability).toArray()),
                (nowMoments[0] - moments[0]) / moments[1],
                nowMoments[1] / moments[1]);
    }

    private static double[] moments(double[] scores, DoubleUnaryOperator scale) {
        double[] values = Arrays.stream(scores).map(scale).toArray();
        double mean = Arrays.stream(values).average().orElseThrow();
        double variance = Arrays.stream(values)
                .map(it -> (it - mean) * (it - mean))
                .average()
                .orElseThrow();
        return new double[] {mean, Math.sqrt(variance)};
    }

    /** Returns the probability before of the value that a share of the draws lies below. */
    double quantile(double share) {
        return probabilities.quantile(share);
    }

    /** Returns the value that has some probability below it before; that probability itself if it is not written in plain quantities. */
    double value(double probability) {
        return written.map(it -> it.quantile(probability)).orElse(probability);
    }

    /** Returns it as it may be written after the log; empty if it is not written in plain quantities. */
    Optional<String> narrowed() {
        return written.map(it -> it.narrowed(now()));
    }

    /** Returns the values of a list, as they are written; none if it is no list. */
    List<String> choices() {
        return written.map(WrittenInput::choices).orElse(List.of());
    }

    /** Returns how often each of the {@link #choices} came up before, from 0 to 1. */
    List<Double> sharesBefore() {
        double[] before = IntStream.range(0, BEFORE)
                .mapToDouble(it -> (it + 0.5) / BEFORE)
                .toArray();
        return written.map(it -> it.shares(before)).orElse(List.of());
    }

    /** Returns how often each of the {@link #choices} comes up now, from 0 to 1. */
    List<Double> sharesNow() {
        return written.map(it -> it.shares(now())).orElse(List.of());
    }

    private double[] now() {
        return IntStream.range(0, probabilities.size())
                .mapToDouble(probabilities::at)
                .toArray();
    }

    /** Returns whether the log says hardly anything of it. */
    boolean isUntouched() {
        return widthLeft > UNTOUCHED_WIDTH && Math.abs(shift) < UNTOUCHED_SHIFT;
    }
}
