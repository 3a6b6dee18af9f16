package org.ionohaul.placing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Predicate;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.ionohaul.fieldlog.EndReadings;
import org.ionohaul.fieldlog.LoggedOutcome;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.fieldlog.NotedTime;
import org.ionohaul.fieldlog.Rounding;
import org.ionohaul.scenario.Direction;
import org.junit.jupiter.api.Test;

/**
 * How often fault is found with a model, right or wrong, when whole logs are repeated. The sessions are invented: log-normal
 * times (spread 0.4), one in ten never delivers, minutes are rounded, some runs are broken off after twelve minutes, some are only
 * known to have delivered; trials share an input (spread 0.2).
 *
 * <p>The table is kept in {@code results/reference/placing-coverage.csv}; renew it with {@code mvn test
 * -Dtest=PlacingCoverageTest -Dgolden.renew=true} (two minutes). Always, each line is repeated a few times and held to the
 * published figure, and the published false alarms to what is promised.
 */
final class PlacingCoverageTest {
    private static final Path TABLE = Path.of("..", "results", "reference", "placing-coverage.csv");
    private static final boolean IS_RENEWED = Boolean.getBoolean("golden.renew");
    private static final int LOGS = 1000;
    private static final int FEW_LOGS = 60;
    private static final int TRIALS = 300;
    private static final long SENT_BYTES = 40_000;
    private static final double MIDDLE_SECONDS = 500;

    /** What is true, against a model of shift 1 and spread 0.4. */
    private record Truth(double slowerTimes, double spread, double failing) {
        static final Truth AS_MODELLED = new Truth(1, 0.4, 0.1);
    }

    private record Experiment(String truth, int runs, Truth what, String finding, Predicate<ModelCheck> isFound) {}

    private static List<Experiment> experiments() {
        List<Experiment> all = new ArrayList<>();
        for (int runs : new int[] {4, 8, 24}) {
            all.add(new Experiment("as modelled", runs, Truth.AS_MODELLED, "any fault", PlacingCoverageTest::isFaulty));
        }
        for (int runs : new int[] {8, 24}) {
            Truth slower = new Truth(1.5, 0.4, 0.1);
            all.add(new Experiment("half as long again", runs, slower, "too hopeful", ModelCheck::isTooHopeful));
            Truth quicker = new Truth(1 / 1.5, 0.4, 0.1);
            all.add(new Experiment("two thirds as long", runs, quicker, "too gloomy", ModelCheck::isTooGloomy));
            Truth wider = new Truth(1, 1.0, 0.1);
            all.add(new Experiment("times spread 1.0", runs, wider, "too sure", ModelCheck::isTooSure));
            Truth narrower = new Truth(1, 0.1, 0.1);
            all.add(new Experiment("times spread 0.1", runs, narrower, "too unsure", ModelCheck::isTooUnsure));
        }
        return all;
    }

    private static boolean isFaulty(ModelCheck check) {
        return check.isTooHopeful() || check.isTooGloomy() || check.isTooSure() || check.isTooUnsure();
    }

    private static SimulatedRun session(UniformRandomProvider random, Truth truth, double sharedScore) {
        double score =
                truth.spread() * ZigguratSampler.NormalizedGaussian.of(random).sample() + 0.2 * sharedScore;
        double through = truth.slowerTimes() * MIDDLE_SECONDS * Math.exp(score);
        boolean isFailing = random.nextDouble() < truth.failing();
        double until = Math.min(isFailing ? through / 2 : through, 720);
        long bytes = Math.min(SENT_BYTES - 1, (long) (SENT_BYTES * until / through));
        return new SimulatedRun(isFailing ? Double.POSITIVE_INFINITY : through, through + 10, bytes);
    }

    /** Every fourth run is broken off unless it is through in twelve minutes; every fourth is only known to be through. */
    private static LoggedRun logged(int number, SimulatedRun true_) {
        boolean isDelivered = Double.isFinite(true_.deliveredSeconds());
        boolean isWatched = number % 4 == 1;
        boolean isBrokenOff = isWatched && true_.deliveredSeconds() > 720;
        NotedTime minutes = new NotedTime(0, 60, Rounding.NEAREST);
        boolean isTimed = number % 4 != 2;
        LoggedOutcome outcome = isBrokenOff
                ? LoggedOutcome.BROKEN_OFF
                : !isDelivered
                        ? LoggedOutcome.GAVE_UP
                        : number % 4 == 3 ? LoggedOutcome.DELIVERED_NOT_CLOSED : LoggedOutcome.DELIVERED;
        double sessionSeconds = isBrokenOff ? 720 : true_.endedSeconds();
        return new LoggedRun(
                number,
                Optional.empty(),
                Optional.empty(),
                "invented",
                Direction.UPLOAD,
                SENT_BYTES,
                OptionalLong.empty(),
                outcome,
                isBrokenOff && number % 8 == 1 ? OptionalLong.of(true_.bytesThrough()) : OptionalLong.empty(),
                isTimed ? Optional.of(minutes.written(sessionSeconds)) : Optional.empty(),
                isDelivered && isTimed && number % 4 == 3
                        ? Optional.of(minutes.written(true_.deliveredSeconds()))
                        : Optional.empty(),
                EndReadings.NONE,
                EndReadings.NONE,
                "");
    }

    private static ModelCheck check(Experiment experiment, int log) {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(1000L * log + experiment.runs());
        ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
        double sharedTruth = normal.sample();
        double[] shared = new double[TRIALS];
        for (int trial = 0; trial < TRIALS; trial++) {
            shared[trial] = normal.sample();
        }
        List<LoggedRun> runs = new ArrayList<>();
        List<List<SimulatedRun>> simulated = new ArrayList<>();
        for (int number = 1; number <= experiment.runs(); number++) {
            runs.add(logged(number, session(random, experiment.what(), sharedTruth)));
            List<SimulatedRun> trials = new ArrayList<>();
            for (int trial = 0; trial < TRIALS; trial++) {
                trials.add(session(random, Truth.AS_MODELLED, shared[trial]));
            }
            simulated.add(trials);
        }
        return LogPlacement.check(runs, simulated);
    }

    private static double foundShare(Experiment experiment, int logs) {
        int found = 0;
        for (int log = 0; log < logs; log++) {
            found += experiment.isFound().test(check(experiment, log)) ? 1 : 0;
        }
        return (double) found / logs;
    }

    private static String name(Experiment experiment) {
        return String.join(",", experiment.truth(), experiment.finding(), String.valueOf(experiment.runs()));
    }

    @Test
    void falseAlarmsAndPowerAreAsPublished() throws IOException {
        if (IS_RENEWED) {
            List<String> lines = new ArrayList<>(List.of("truth,finding,runs,logs,share of logs,standard error"));
            for (Experiment experiment : experiments()) {
                double share = foundShare(experiment, LOGS);
                lines.add(name(experiment)
                        + String.format(
                                Locale.ROOT, ",%d,%.3f,%.3f", LOGS, share, Math.sqrt(share * (1 - share) / LOGS)));
            }
            Files.write(TABLE, lines);
        }
        List<String> published = Files.readAllLines(TABLE);
        List<Experiment> experiments = experiments();
        assertEquals(experiments.size() + 1, published.size());
        for (int i = 0; i < experiments.size(); i++) {
            String[] cells = published.get(i + 1).split(",", -1);
            assertTrue(published.get(i + 1).startsWith(name(experiments.get(i)) + ","), published.get(i + 1));
            double share = Double.parseDouble(cells[4]);
            // The first of the published logs again: a part of a thousand, so within three standard errors of their
            // share.
            double error = 3 * Math.sqrt(Math.max(share * (1 - share), 0.01) / FEW_LOGS) + 0.5 / FEW_LOGS;
            assertEquals(share, foundShare(experiments.get(i), FEW_LOGS), error, published.get(i + 1));
            if (cells[1].equals("any fault")) {
                // Promised is 5 %; a published share may exceed it by three standard errors of its own.
                assertTrue(share <= ModelCheck.ERROR_RATE + 3 * Math.sqrt(0.05 * 0.95 / LOGS), published.get(i + 1));
            }
        }
    }
}
