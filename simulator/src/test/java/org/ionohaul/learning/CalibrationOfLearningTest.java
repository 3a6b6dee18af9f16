package org.ionohaul.learning;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.study.TrialPool;
import org.junit.jupiter.api.Test;

final class CalibrationOfLearningTest {
    @Test
    void t() {
        for (boolean straight : new boolean[] {true, false}) {
            InventedLog.Kind kind = straight ? new InventedLog.Kind(true, 60, 1e5) : new InventedLog.Kind(false, 60, 1200);
            int logs = Integer.getInteger("logs", 100);
            int[][] bins = new int[3][10];
            int[] in90 = new int[3], in50 = new int[3];
            double ess = 0; int unexpl = 0, ill = 0; double[] width=new double[3];
            for (int log = 0; log < logs; log++) {
                UniformRandomProvider random = InventedLog.random(9000 + log);
                double[] truth = Belief.prior(3, 1, random).get(0);
                List<LoggedRun> runs = InventedLog.runs(kind, truth, 8, random);
                LogModel model = InventedLog.model(kind, runs, List.of(), 100 + log);
                Learned learned = new Learner(model, Integer.getInteger("sets", 300), TrialPool.of(2), log).learned().orElseThrow();
                ess += learned.effectiveSets();
                unexpl += learned.isExplained() ? 0 : 1;
                ill += learned.isWellFounded() ? 0 : 1;
                for (int u = 0; u < 3; u++) {
                    int uu = u;
                    double rank = learned.belief().draws().stream().filter(it -> it[uu] < truth[uu]).count() / 1000.0;
                    bins[u][Math.min(9, (int) (10 * rank))]++;
                    in90[u] += rank > 0.05 && rank < 0.95 ? 1 : 0;
                    in50[u] += rank > 0.25 && rank < 0.75 ? 1 : 0;
                    double m = learned.belief().draws().stream().mapToDouble(it -> it[uu]).average().orElseThrow();
                    width[u] += Math.sqrt(learned.belief().draws().stream().mapToDouble(it -> (it[uu]-m)*(it[uu]-m)).average().orElseThrow()) / logs;
                }
            }
            System.out.println(kind + " ess " + ess / logs + " unexplained " + unexpl + " ill " + ill);
            for (int u = 0; u < 3; u++) System.out.println(u + " " + java.util.Arrays.toString(bins[u]) + " 90: " + in90[u] + " 50: " + in50[u] + " width " + width[u]);
        }
    }
}
