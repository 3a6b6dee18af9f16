package org.ionohaul.placing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.ionohaul.channel.End;
import org.ionohaul.fieldlog.EndReadings;
import org.ionohaul.fieldlog.HowRead;
import org.ionohaul.fieldlog.LoggedOutcome;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.fieldlog.Reading;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Draws;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Understood;
import org.junit.jupiter.api.Test;

/** What is said of ends is counted: whole logs of readings are drawn, checked, and told from the truth that they were drawn with. */
final class EndCheckTest {
    private static final int LOGS = 2000;
    private static final int TRIALS = 60;
    private static final double METER_DB = 2;

    /** Three standard errors of a share of one in twenty. */
    private static final double MARGIN = 3 * Math.sqrt(0.05 * 0.95 / LOGS);

    private static Understood understood(String file, Map<String, String> changes) throws ScenarioProblems {
        return ScenarioReader.understand(SourceFiles.DISK, Path.of("../scenarios", file), changes);
    }

    private static LoggedRun run(int number, EndReadings near, EndReadings far) {
        return new LoggedRun(
                number,
                Optional.empty(),
                Optional.empty(),
                "brisk-comb",
                Direction.UPLOAD,
                1000,
                OptionalLong.empty(),
                LoggedOutcome.DELIVERED,
                OptionalLong.empty(),
                Optional.empty(),
                Optional.empty(),
                near,
                far,
                "");
    }

    private static Optional<Reading> read(double value) {
        return Optional.of(new Reading(value, HowRead.AVERAGE, METER_DB));
    }

    private static Gauge drawn(RunBench bench, Gauge gauge, Draws truth, double wrongDb, UniformRandomProvider random) {
        double error = METER_DB * ZigguratSampler.NormalizedGaussian.of(random).sample();
        double value = bench.expected(gauge, truth) + wrongDb + error;
        return new Gauge(gauge.run(), gauge.end(), gauge.what(), value, gauge.deviationDb());
    }

    /** In how many of the logs something is found; the truth is drawn from what the scenario holds for possible, but for one end. */
    private static double share(
            Understood understood, List<LoggedRun> runs, double wrongAtFarDb, Predicate<List<EndCheck>> found) {
        RunBench bench = new RunBench(understood, runs);
        List<Gauge> plan =
                runs.stream().flatMap(it -> bench.gauges(it).stream()).toList();
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(5);
        long hits = IntStream.range(0, LOGS)
                .filter(log -> {
                    Draws truth = bench.draws(1_000_000 + log);
                    List<Gauge> gauges = plan.stream()
                            .map(it -> drawn(bench, it, truth, it.end() == End.FAR ? wrongAtFarDb : 0, random))
                            .toList();
                    return found.test(EndCheck.of(bench, gauges, TRIALS));
                })
                .count();
        return (double) hits / LOGS;
    }

    private static boolean blames(List<EndCheck> checks) {
        return checks.stream().anyMatch(EndCheck::isBeyondStated);
    }

    private static List<LoggedRun> readOnce() {
        EndReadings levels = new EndReadings(Optional.empty(), read(-90), read(-100));
        return List.of(run(1, levels, levels));
    }

    private static List<LoggedRun> readTwice() {
        EndReadings ratio = new EndReadings(read(12), Optional.empty(), Optional.empty());
        return List.of(run(1, ratio, ratio), run(2, EndReadings.NONE, ratio), run(3, ratio, EndReadings.NONE));
    }

    @Test
    void signalAndNoiseThatAreRightlyStatedAreBlamedInFiveOfAHundredLogs() throws ScenarioProblems {
        Understood known = understood("polar-hut.toml", Map.of());
        // Four independent checks at 1.25 % each: 4.9 %.
        assertEquals(0.049, share(known, readOnce(), 0, EndCheckTest::blames), MARGIN);
        double anyOff = share(known, readOnce(), 0, it -> it.stream().anyMatch(EndCheck::isBeyondChance));
        assertEquals(0.049, anyOff, MARGIN, "the intervals hold as often");
    }

    @Test
    void whatIsNotKnownIsBlamedNoMoreOftenWhereverTheTruthLies() throws ScenarioProblems {
        Understood unsure = understood("orchard-net.toml", Map.of());
        double blamed = share(unsure, readTwice(), 0, EndCheckTest::blames);
        assertTrue(blamed <= 0.05 + MARGIN, "" + blamed);
        double offMiddle = share(unsure, readTwice(), 0, it -> it.stream().anyMatch(EndCheck::isBeyondChance));
        assertTrue(offMiddle > 0.5, "most true levels are not the middle one: " + offMiddle);
    }

    @Test
    void anEndThatIsWronglyStatedIsFound() throws ScenarioProblems {
        Understood known = understood("orchard-net.toml", Map.of("near.snr", "12 dB", "far.snr", "12 dB"));
        double found = share(
                known,
                readTwice(),
                -6,
                it -> it.stream().allMatch(check -> check.isBeyondStated() == (check.end() == End.FAR)));
        // Two readings of 2 dB each: 6 dB is 4.24 of their standard errors, 2.24 are needed at 2.5 %, and the scatter
        // of
        // two readings widens the error now and then.
        assertTrue(found > 0.85, "" + found);
        Understood unsure = understood("orchard-net.toml", Map.of());
        double foundFarOff = share(unsure, readTwice(), -20, EndCheckTest::blames);
        // 20 dB against a spread of hypot(4, 1.4) dB: 4.7 standard deviations.
        assertTrue(foundFarOff > 0.95, "" + foundFarOff);
    }
}
