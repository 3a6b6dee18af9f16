package org.ionohaul.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleSupplier;
import java.util.function.Function;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.OrderedSample;
import org.junit.jupiter.api.Test;

/**
 * How often the interval that a study stops with covers the truth, when the whole procedure, looks and all, is repeated.
 *
 * <p>The table is kept in {@code results/reference/stopping-coverage.csv}; renew it with {@code mvn test
 * -Dtest=StoppingCoverageTest -Dgolden.renew=true} and review the difference.
 */
final class StoppingCoverageTest {
    private static final Path TABLE = Path.of("..", "results", "reference", "stopping-coverage.csv");
    private static final int REPETITIONS = 2000;
    private static final int MOST_TRIALS = 100_000;
    private static final double NEVER_SHARE = 0.02;

    private final UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(6001L);

    @Test
    void intervalsCoverTheTruthAboutAsOftenAsTheySay() throws IOException {
        List<Line> lines = new ArrayList<>();
        for (double halfWidth : new double[] {0.05, 0.03, 0.02}) {
            for (double share : new double[] {0.5, 0.7, 0.8, 0.9, 0.95, 0.98, 0.99, 0.995}) {
                lines.add(share(share, halfWidth));
            }
        }
        for (double probability : new double[] {0.1, 0.5, 0.9}) {
            lines.add(quantile("exponential", ZigguratSampler.Exponential.of(random)::sample, probability));
            ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
            lines.add(quantile("log-normal", () -> Math.exp(0.5 * normal.sample()), probability));
        }
        assertEquals(30, lines.size());
        // 4 standard errors of 2,000 repetitions. Wilson's interval dips near shares of 0 and 1 at any size of sample:
        // L.
        // D. Brown, T. T. Cai and A. DasGupta, "Interval estimation for a binomial proportion", Stat. Sci. 16, 2001.
        lines.forEach(line -> assertTrue(line.exactCoverage() >= 0.95 - 4 * 0.0049, line.toString()));
        lines.forEach(line -> assertTrue(line.coverage() >= 0.93 - 4 * 0.0057, line.toString()));
        assertTableIsAsPublished(lines);
    }

    private Line share(double share, double halfWidth) {
        PrecisionGoal goal = new PrecisionGoal.DeadlineChances(halfWidth);
        Transfer transfer =
                new Transfer("letter", InventedStudy.LETTER.files(), InventedStudy.LETTER.directions(), List.of(share));
        return repeat(
                String.format(Locale.ROOT, "P(deadline) within %.0f points", 100 * halfWidth),
                String.format(Locale.ROOT, "P = %s", share),
                transfer,
                goal,
                random::nextDouble,
                share,
                sample -> sample.atMost(share).wilson(Estimate.CONFIDENCE),
                sample -> sample.atMost(share).exact(Estimate.CONFIDENCE));
    }

    /** Two of a hundred never arrive, so that the quantile asked for is a little further up among those that do. */
    private Line quantile(String name, DoubleSupplier seconds, double probability) {
        double amongArrivals = probability / (1 - NEVER_SHARE);
        double truth = name.startsWith("log")
                ? Math.exp(0.5 * NormalDistribution.of(0, 1).inverseCumulativeProbability(amongArrivals))
                : -Math.log1p(-amongArrivals);
        return repeat(
                String.format(Locale.ROOT, "%.0f %% time within 10 %%", 100 * probability),
                name + " with 2 % never",
                InventedStudy.LETTER,
                new PrecisionGoal.CompletionQuantile(probability, 0.1),
                () -> random.nextDouble() < NEVER_SHARE ? Double.POSITIVE_INFINITY : seconds.getAsDouble(),
                truth,
                sample -> sample.quantile(probability, Estimate.CONFIDENCE),
                sample -> sample.quantile(probability, Estimate.CONFIDENCE));
    }

    private static Line repeat(
            String goalName,
            String truthName,
            Transfer transfer,
            PrecisionGoal goal,
            DoubleSupplier seconds,
            double truth,
            Function<OrderedSample, Estimate> answer,
            Function<OrderedSample, Estimate> exactAnswer) {
        int covered = 0;
        int exactCovered = 0;
        long trials = 0;
        for (int i = 0; i < REPETITIONS; i++) {
            OrderedSample sample = sampleUntil(goal, transfer, seconds);
            covered += covers(answer.apply(sample), truth) ? 1 : 0;
            exactCovered += covers(exactAnswer.apply(sample), truth) ? 1 : 0;
            trials += sample.size();
        }
        return new Line(
                goalName,
                truthName,
                (double) trials / REPETITIONS,
                (double) covered / REPETITIONS,
                (double) exactCovered / REPETITIONS);
    }

    private static boolean covers(Estimate estimate, double truth) {
        return estimate.low() <= truth && truth <= estimate.high();
    }

    private static OrderedSample sampleUntil(PrecisionGoal goal, Transfer transfer, DoubleSupplier seconds) {
        double[] drawn = new double[MOST_TRIALS];
        AtomicInteger count = new AtomicInteger();
        int size = SampleSizes.stopAt(
                asked -> {
                    while (count.get() < asked) {
                        drawn[count.getAndIncrement()] = seconds.getAsDouble();
                    }
                    return goal.isReached(transfer, OrderedSample.of(Arrays.copyOf(drawn, asked)));
                },
                MOST_TRIALS);
        return OrderedSample.of(Arrays.copyOf(drawn, size));
    }

    private static void assertTableIsAsPublished(List<Line> lines) throws IOException {
        List<String> table = new ArrayList<>();
        table.add(
                "goal,truth,repetitions,mean trials,nominal coverage,observed coverage,observed coverage of the exact interval");
        lines.forEach(line -> table.add(line.csv()));
        if (Boolean.getBoolean("golden.renew")) {
            Files.write(TABLE, table);
        }
        assertEquals(Files.readAllLines(TABLE), table);
    }

    private record Line(String goal, String truth, double meanTrials, double coverage, double exactCoverage) {
        String csv() {
            return String.format(
                    Locale.ROOT,
                    "%s,%s,%d,%.0f,0.95,%.4f,%.4f",
                    goal,
                    truth,
                    REPETITIONS,
                    meanTrials,
                    coverage,
                    exactCoverage);
        }
    }
}
