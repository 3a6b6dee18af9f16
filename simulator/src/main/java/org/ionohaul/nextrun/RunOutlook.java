package org.ionohaul.nextrun;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.learning.ScoreRegression;
import org.ionohaul.learning.ScoreSpan;
import org.ionohaul.learning.Scores;
import org.ionohaul.placing.RunScale;
import org.ionohaul.placing.SimulatedRun;

/** What a run will come to, under each draw of what is believed: a regression over runs that were simulated under some of them. */
final class RunOutlook implements Evidence {
    private final List<SimulatedRun> simulated;
    private final boolean[] kept;
    private final List<ScoreRegression.ScoreForecast> forecasts;
    private final RunScale scale;
    private final List<SimulatedRun> rising;
    private final Map<ScoreSpan, double[]> known = new HashMap<>();

    /**
     * Learns it.
     *
     * @param plan the run as it will be logged
     * @param straightened the unknowns of each draw
     * @param simulated a run under each of the first of them
     * @param kept which draws count
     */
    RunOutlook(LoggedRun plan, double[][] straightened, List<SimulatedRun> simulated, boolean[] kept) {
        this.simulated = simulated;
        this.kept = kept;
        int[] used = IntStream.range(0, simulated.size()).filter(it -> kept[it]).toArray();
        List<SimulatedRun> sample = IntStream.of(used).mapToObj(simulated::get).toList();
        this.scale = RunScale.of(plan, sample);
        double[] weights = new double[used.length];
        Arrays.fill(weights, 1);
        ScoreRegression regression = ScoreRegression.fit(
                IntStream.of(used).mapToObj(it -> straightened[it]).toArray(double[][]::new),
                sample.stream().map(it -> ScoreSpan.of(scale, it)).toArray(ScoreSpan[]::new),
                weights);
        this.forecasts = Arrays.stream(straightened).map(regression::at).toList();
        this.rising = new ArrayList<>(sample);
        rising.sort(Comparator.comparingDouble(it -> scale.standing(it).low()));
    }

    /** Returns the chance under each draw that a run is through within some time, in seconds. */
    double[] chancesWithin(double seconds) {
        long through =
                rising.stream().filter(it -> it.deliveredSeconds() <= seconds).count();
        ScoreSpan within =
                new ScoreSpan(Double.NEGATIVE_INFINITY, Scores.ofProbability((double) through / rising.size()));
        return forecasts.stream().mapToDouble(it -> it.probability(within)).toArray();
    }

    /** The first observation is the run that was simulated, further ones are drawn as the regression has them. */
    @Override
    public void observe(int truth, int time, UniformRandomProvider random, double[] logs) {
        double score = forecasts.get(truth).mean()
                + forecasts.get(truth).deviation()
                        * ZigguratSampler.NormalizedGaussian.of(random).sample();
        int rank = (int) Math.min(rising.size() - 1, Scores.probability(score) * rising.size());
        if (!kept[truth]) {
            return;
        }
        ScoreSpan noted = ScoreSpan.of(scale.noted(time == 0 ? simulated.get(truth) : rising.get(rank)));
        double[] more = known.computeIfAbsent(
                noted,
                span -> forecasts.stream()
                        .mapToDouble(it -> it.logProbability(span))
                        .toArray());
        for (int draw = 0; draw < logs.length; draw++) {
            logs[draw] += more[draw];
        }
    }
}
