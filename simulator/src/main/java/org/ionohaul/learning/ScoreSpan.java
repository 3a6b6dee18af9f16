package org.ionohaul.learning;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.ionohaul.placing.RankSpan;
import org.ionohaul.placing.RunScale;
import org.ionohaul.placing.SimulatedRun;

/**
 * Between which standard normal scores a run lies among simulated ones.
 *
 * @param low the quicker, or minus infinity
 * @param high the slower, or infinity; not below {@code low}
 */
public record ScoreSpan(double low, double high) {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    /** Returns between which scores a range of ranks lies. */
    public static ScoreSpan of(RankSpan ranks) {
        return new ScoreSpan(Scores.ofProbability(ranks.low()), Scores.ofProbability(ranks.high()));
    }

    /** Returns where a simulated run stands among its kind: alone at one score, or in the span of all that are alike. */
    public static ScoreSpan of(RunScale scale, SimulatedRun simulated) {
        RankSpan standing = scale.standing(simulated);
        boolean isAlone = standing.high() - standing.low() < 1.5 / scale.size();
        return of(isAlone ? new RankSpan(standing.middle(), standing.middle()) : standing);
    }

    /** Returns mean and variance of a normal variable that is known to lie within. */
    double[] moments(double mean, double deviation) {
        if (high - low < 1e-9) {
            return new double[] {low, 0};
        }
        double from = (low - mean) / deviation;
        double to = (high - mean) / deviation;
        double mass = from > 0
                ? NORMAL.survivalProbability(from) - NORMAL.survivalProbability(to)
                : NORMAL.cumulativeProbability(to) - NORMAL.cumulativeProbability(from);
        if (mass < 1e-12) {
            double nearest = from > 0 ? low : high;
            return new double[] {nearest, 0};
        }
        double densityFrom = NORMAL.density(from);
        double densityTo = NORMAL.density(to);
        double shift = (densityFrom - densityTo) / mass;
        double bend = (weighted(from, densityFrom) - weighted(to, densityTo)) / mass;
        return new double[] {mean + deviation * shift, Math.max(0, deviation * deviation * (1 + bend - shift * shift))};
    }

    private static double weighted(double at, double density) {
        return Double.isInfinite(at) ? 0 : at * density;
    }
}
