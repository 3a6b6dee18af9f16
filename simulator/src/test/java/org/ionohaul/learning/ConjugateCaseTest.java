package org.ionohaul.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.study.TrialPool;
import org.junit.jupiter.api.Test;

/**
 * Where times are log-normal and their logarithm is straight in a normal unknown, the posterior is known exactly (A. Gelman et
 * al., "Bayesian Data Analysis", 3rd ed., section 2.5): the likelihood-free answer must meet it.
 */
final class ConjugateCaseTest {
    private static final InventedLog.Kind STRAIGHT = new InventedLog.Kind(true, 1, 1e5);
    private static final double SLOPE = 0.4;
    private static final double SCATTER = 0.3;

    private static double[] exact(List<LoggedRun> runs, int unknown, List<LogModel.MeterReading> readings) {
        double precision = 1;
        double sum = 0;
        for (int run = unknown; run < runs.size(); run += 2) {
            // The session ends ten seconds after delivery.
            double log = Math.log((runs.get(run).sessionTime().orElseThrow().seconds() - 10) / 600);
            precision += SLOPE * SLOPE / (SCATTER * SCATTER);
            sum += SLOPE * log / (SCATTER * SCATTER);
        }
        for (LogModel.MeterReading reading : readings) {
            precision += unknown == 0 ? 1 / (reading.deviation() * reading.deviation()) : 0;
            sum += unknown == 0 ? reading.value() / (reading.deviation() * reading.deviation()) : 0;
        }
        return new double[] {sum / precision, Math.sqrt(1 / precision)};
    }

    @Test
    void theAnswerMeetsTheExactPosterior() {
        for (int log = 0; log < 5; log++) {
            double[] truth = {1.2 - 0.5 * log, -0.8 + 0.3 * log, 0.5};
            List<LoggedRun> runs = InventedLog.runs(STRAIGHT, truth, 8, InventedLog.random(log));
            List<LogModel.MeterReading> readings = List.of(new LogModel.MeterReading(truth[0] + 0.2, 0.25));
            LogModel model = InventedLog.model(STRAIGHT, runs, readings, log);
            Learned learned =
                    new Learner(model, 400, TrialPool.of(2), log).learned().orElseThrow();
            for (int unknown = 0; unknown < 2; unknown++) {
                double[] exact = exact(runs, unknown, readings);
                double mean = mean(learned.belief(), unknown);
                double deviation = deviation(learned.belief(), unknown);
                // 1,200 runs of each kind give the regression's line a standard error of 0.3 / sqrt(1,200) in log time,
                // which is 0.02
                // of the unknown; 1,000 draws of the posterior 0.016; the slope's some 0.02 more: 4 errors.
                assertEquals(exact[0], mean, 0.12);
                assertEquals(exact[1], deviation, 0.06);
            }
            // Nothing hangs on the third.
            assertEquals(0, mean(learned.belief(), 2), 0.2);
            assertEquals(1, deviation(learned.belief(), 2), 0.15);
            assertTrue(learned.isExplained() && learned.isWellFounded());
        }
    }

    private static double mean(Belief belief, int unknown) {
        return belief.draws().stream().mapToDouble(it -> it[unknown]).average().orElseThrow();
    }

    private static double deviation(Belief belief, int unknown) {
        double mean = mean(belief, unknown);
        return Math.sqrt(belief.draws().stream()
                .mapToDouble(it -> (it[unknown] - mean) * (it[unknown] - mean))
                .average()
                .orElseThrow());
    }
}
