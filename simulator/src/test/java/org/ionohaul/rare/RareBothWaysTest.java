package org.ionohaul.rare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.apache.commons.csv.CSVRecord;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.Proportion;
import org.ionohaul.study.TrialPool;
import org.ionohaul.waveform.ReferenceFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Rare misses of shipped scenarios both ways, by splitting and by counting under another seed, with what each took.
 *
 * <p>The table is kept in {@code results/reference/rare-both-ways.csv}; renew it with {@code mvn test -Dtest=RareBothWaysTest
 * -Dgolden.renew=true} (eleven minutes of one processor) and review the difference. Always, the published figures are held against
 * each other, and against a short count of today's program.
 */
final class RareBothWaysTest {
    private static final String TABLE = "rare-both-ways.csv";
    private static final int TREES = 6000;
    private static final int COUNTED = 500_000;
    private static final int COUNTED_ALWAYS = 6000;
    private static final long SPLITTING_SEED = 41;
    private static final long COUNTING_SEED = 7;
    private static final long ALWAYS_SEED = 8;

    /** A right program oversteps this once in 16,000 comparisons. */
    private static final double STANDARD_ERRORS = 4;

    /**
     * What is missed.
     *
     * @param deadlinesSeconds rising; one count to the last serves all
     */
    private record Case(String scenario, int transfer, Direction direction, List<Integer> deadlinesSeconds) {
        Scenario read() throws ScenarioProblems {
            return ScenarioReader.read(SourceFiles.DISK, Path.of("..", "scenarios", scenario + ".toml"), Map.of());
        }

        /** The first mode: brisk-comb in all of them. */
        Score score(int deadlineSeconds) throws ScenarioProblems {
            Scenario read = read();
            Mode mode = read.modes().get(0);
            return new MissedDeadline(read, read.transfers().get(transfer), direction, mode, deadlineSeconds);
        }

        List<Object> names(int deadlineSeconds) throws ScenarioProblems {
            Scenario read = read();
            Transfer sent = read.transfers().get(transfer);
            String way = direction.name().toLowerCase(Locale.ROOT);
            return List.of(scenario, sent.name(), way, read.modes().get(0).name(), deadlineSeconds);
        }
    }

    private static final List<Case> CASES = List.of(
            new Case("river-watch", 1, Direction.UPLOAD, List.of(300, 420, 600)),
            new Case("noon-hop", 1, Direction.DOWNLOAD, List.of(60)));

    /** How late each counted trial was, and what all took. */
    private record Count(List<Double> seconds, double tookSeconds) {
        static Count of(Case what, int trials, long seed) throws ScenarioProblems {
            List<Integer> deadlines = what.deadlinesSeconds();
            Score score = what.score(deadlines.get(deadlines.size() - 1));
            double before = processorSeconds();
            List<Double> seconds = TrialPool.of(2).run(trials, trial -> score.of(new TrialStreams(seed, trial)));
            return new Count(seconds, processorSeconds() - before);
        }

        Proportion missed(int deadlineSeconds) {
            long later = seconds.stream().filter(it -> it > deadlineSeconds).count();
            return new Proportion(Math.toIntExact(later), seconds.size());
        }
    }

    @Test
    void bothWaysTellTheSame() throws IOException {
        List<CSVRecord> lines = ReferenceFile.read(TABLE);
        assertEquals(CASES.stream().mapToInt(it -> it.deadlinesSeconds().size()).sum(), lines.size());
        for (CSVRecord line : lines) {
            double split = number(line, "split_chance");
            double missed = number(line, "missed");
            double counted = number(line, "counted");
            String what = line.toString();
            assertTrue(number(line, "arrived") >= RareChance.FEWEST_ARRIVED, what);
            assertTrue(number(line, "split_low") <= number(line, "counted_high"), what);
            assertTrue(number(line, "counted_low") <= number(line, "split_high"), what);
            double error = Math.hypot(number(line, "split_error"), Math.sqrt(split / counted));
            assertEquals(split, missed / counted, STANDARD_ERRORS * error, what);
        }
    }

    @Test
    void theProgramStillMissesAsOftenAsIsPublished() throws IOException, ScenarioProblems {
        List<CSVRecord> lines = ReferenceFile.read(TABLE);
        int line = 0;
        for (Case what : CASES) {
            Count count = Count.of(what, COUNTED_ALWAYS, ALWAYS_SEED);
            for (int deadline : what.deadlinesSeconds()) {
                CSVRecord published = lines.get(line++);
                assertEquals(number(published, "deadline_s"), deadline);
                Proportion before =
                        new Proportion((int) number(published, "missed"), (int) number(published, "counted"));
                Proportion now = count.missed(deadline);
                double share = (double) (before.hits() + now.hits()) / (before.total() + now.total());
                double error = Math.sqrt(share * (1.0 / before.total() + 1.0 / now.total()));
                assertEquals(before.share(), now.share(), STANDARD_ERRORS * error, published.toString());
            }
        }
    }

    @Test
    @EnabledIfSystemProperty(named = "golden.renew", matches = "true")
    void renewTable() throws ScenarioProblems {
        ReferenceFile file = new ReferenceFile()
                .comment("Chance to miss a deadline, of shipped scenarios: by splitting (" + TREES
                        + " first trials) and by counting under another seed.")
                .comment(
                        "arrived: first trials that led to a miss. split_trials: in the end, without those that chose the levels;"
                                + " split_cpu_s holds these too. Ranges hold the truth in 95 of 100.")
                .comment(
                        "z: difference over its standard error. gain: processor time that counting takes for the standard error of"
                                + " splitting, over what splitting took.")
                .comment("Renew: ./mvnw -pl simulator test -Dtest=RareBothWaysTest -Dgolden.renew=true")
                .row(
                        "scenario",
                        "transfer",
                        "direction",
                        "mode",
                        "deadline_s",
                        "split_chance",
                        "split_low",
                        "split_high",
                        "split_error",
                        "arrived",
                        "split_trials",
                        "split_cpu_s",
                        "missed",
                        "counted",
                        "counted_low",
                        "counted_high",
                        "counted_cpu_s",
                        "z",
                        "gain");
        for (Case what : CASES) {
            // Compiling is not charged to what happens to come first.
            Count.of(what, COUNTED_ALWAYS, ALWAYS_SEED);
            Count count = Count.of(what, COUNTED, COUNTING_SEED);
            for (int deadline : what.deadlinesSeconds()) {
                row(file, what, deadline, count);
            }
        }
        file.write(TABLE);
    }

    private static void row(ReferenceFile file, Case what, int deadline, Count count) throws ScenarioProblems {
        double before = processorSeconds();
        Splitting splitting = new Splitting(what.score(deadline), SPLITTING_SEED, TrialPool.of(2));
        RareChance split =
                splitting.chance(splitting.ladder().orElseThrow(), TREES).orElseThrow();
        double splitSeconds = processorSeconds() - before;
        Proportion missed = count.missed(deadline);
        Estimate counted = missed.exact(Estimate.CONFIDENCE);
        double chance = split.chance().value();
        double variance = split.standardError() * split.standardError();
        double countedToo = chance * (1 - chance) / variance;
        double each = count.tookSeconds() / COUNTED;
        List<Object> cells = new ArrayList<>(what.names(deadline));
        cells.addAll(List.of(
                figures(chance),
                figures(split.chance().low()),
                figures(split.chance().high()),
                figures(split.standardError()),
                split.arrived(),
                split.trials(),
                Math.round(splitSeconds),
                missed.hits(),
                COUNTED,
                figures(counted.low()),
                figures(counted.high()),
                Math.round(count.tookSeconds()),
                (chance - missed.share()) / Math.sqrt(variance + chance / COUNTED),
                countedToo * each / splitSeconds));
        file.row(cells.toArray());
    }

    private static String figures(double chance) {
        return String.format(Locale.ROOT, "%.3g", chance);
    }

    /** All threads of this process, since a pool's threads end with it. */
    private static double processorSeconds() {
        var system = (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        return (double) system.getProcessCpuTime() / TimeUnit.SECONDS.toNanos(1);
    }

    private static double number(CSVRecord line, String head) {
        return Double.parseDouble(line.get(head));
    }
}
