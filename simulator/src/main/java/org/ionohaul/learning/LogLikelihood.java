package org.ionohaul.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.ionohaul.placing.RunScale;
import org.ionohaul.placing.SimulatedRun;

/**
 * How likely a log is under any values of the unknowns, by simulation: for each run, how the place among its kind hangs on
 * the unknowns is learned from simulated runs ({@link ScoreRegression}); the chance of what was logged is that of the span of places
 * that rounding or censoring leaves open. Given the unknowns runs are independent, so their chances multiply. This is a synthetic
 * likelihood (S. N. Wood, Nature 466, 2010) whose regressions share simulations between values of the unknowns (G. Papamakarios,
 * D. Sterratt, I. Murray, "Sequential neural likelihood", AISTATS 2019, with a plain regression for the network).
 */
final class LogLikelihood {
    private final LogModel model;
    private final List<RunScale> scales;
    private final List<ScoreRegression> regressions;
    private final List<ScoreSpan> logged;
    private final double[] read;

    private LogLikelihood(LogModel model, List<RunScale> scales, List<ScoreRegression> regressions) {
        this.model = model;
        this.scales = List.copyOf(scales);
        this.regressions = List.copyOf(regressions);
        this.logged = scales.stream().map(it -> ScoreSpan.of(it.logged())).toList();
        this.read = model.readings().stream()
                .mapToDouble(LogModel.MeterReading::value)
                .toArray();
    }

    /**
     * Learns it.
     *
     * @param sets scores of the unknowns that were simulated
     * @param simulated for each of them every run
     * @param weights how much each set counts
     */
    static LogLikelihood of(LogModel model, List<double[]> sets, List<List<SimulatedRun>> simulated, double[] weights) {
        List<double[]> straightened =
                sets.stream().map(it -> model.straightened(it)).toList();
        List<RunScale> scales = new ArrayList<>();
        List<ScoreRegression> regressions = new ArrayList<>();
        for (int run = 0; run < model.runs().size(); run++) {
            int place = run;
            List<SimulatedRun> ofRun =
                    simulated.stream().map(it -> it.get(place)).toList();
            RunScale scale = RunScale.of(model.runs().get(run), ofRun);
            scales.add(scale);
            regressions.add(ScoreRegression.fit(
                    straightened.stream()
                            .map(it -> chosen(it, model.unknownsOf(place)))
                            .toArray(double[][]::new),
                    ofRun.stream().map(it -> ScoreSpan.of(scale, it)).toArray(ScoreSpan[]::new),
                    weights));
        }
        return new LogLikelihood(model, scales, regressions);
    }

    private static double[] chosen(double[] values, int[] places) {
        return IntStream.of(places).mapToDouble(it -> values[it]).toArray();
    }

    /** Returns how many of the logged runs lie beyond all that were simulated of their kind. */
    int beyondAll() {
        return (int) scales.stream().filter(RunScale::isBeyondAll).count();
    }

    /** Returns the logarithm of the likelihood under some scores, up to a constant. */
    double at(double[] scores) {
        return log(forecasts(scores), logged) + ofReadings(read, model.expectedReadings(scores));
    }

    private List<ScoreRegression.ScoreForecast> forecasts(double[] scores) {
        double[] straightened = model.straightened(scores);
        return IntStream.range(0, regressions.size())
                .mapToObj(run -> regressions.get(run).at(chosen(straightened, model.unknownsOf(run))))
                .toList();
    }

    private static double log(List<ScoreRegression.ScoreForecast> forecasts, List<ScoreSpan> spans) {
        double sum = 0;
        for (int run = 0; run < spans.size(); run++) {
            sum += forecasts.get(run).logProbability(spans.get(run));
        }
        return sum;
    }

    private double ofReadings(double[] values, double[] expected) {
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            double off = (values[i] - expected[i]) / model.readings().get(i).deviation();
            sum -= off * off / 2;
        }
        return sum;
    }

    /**
     * Returns how often logs that the model itself makes are less likely under it than the real one, or as little: a small
     * chance says that no values of the unknowns explain the log (prior predictive check with the evidence as its measure: G. E. P.
     * Box, J. R. Stat. Soc. A 143, 1980).
     *
     * @param sets scores of the prior
     * @param simulated for each of them every run: a log of the model's own
     * @param grid other scores of the prior, over which the evidence is averaged
     */
    double chanceOfLess(
            List<double[]> sets,
            List<List<SimulatedRun>> simulated,
            List<double[]> grid,
            UniformRandomProvider random) {
        List<List<ScoreRegression.ScoreForecast>> forecasts =
                grid.stream().map(this::forecasts).toList();
        List<double[]> expected = grid.stream().map(model::expectedReadings).toList();
        double real = evidence(forecasts, expected, logged, read);
        int less = 1;
        for (int i = 0; i < sets.size(); i++) {
            List<SimulatedRun> made = simulated.get(i);
            List<ScoreSpan> spans = IntStream.range(0, made.size())
                    .mapToObj(run -> ScoreSpan.of(scales.get(run).noted(made.get(run))))
                    .toList();
            double[] values = read(model.expectedReadings(sets.get(i)), random);
            less += evidence(forecasts, expected, spans, values) <= real ? 1 : 0;
        }
        return (double) less / (sets.size() + 1);
    }

    private double[] read(double[] expected, UniformRandomProvider random) {
        ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
        return IntStream.range(0, expected.length)
                .mapToDouble(it -> expected[it] + model.readings().get(it).deviation() * normal.sample())
                .toArray();
    }

    private double evidence(
            List<List<ScoreRegression.ScoreForecast>> forecasts,
            List<double[]> expected,
            List<ScoreSpan> spans,
            double[] values) {
        return Weights.logMean(IntStream.range(0, forecasts.size())
                .mapToDouble(it -> log(forecasts.get(it), spans) + ofReadings(values, expected.get(it)))
                .toArray());
    }
}
