package org.ionohaul.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.SessionResult;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.InventedStudy;
import org.ionohaul.study.Journal;
import org.ionohaul.study.LineStore;
import org.ionohaul.study.PrecisionGoal;
import org.ionohaul.study.RowStore;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.StudyRunner;
import org.ionohaul.study.TrialPool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How often a grid's verdicts are wrong when each row stops as soon as it is exact enough: whole rows repeated, looks and all, on
 * sessions whose truth is known.
 *
 * <p>The table is kept in {@code results/reference/grid-verdicts.csv}; renew it with {@code mvn test -Dtest=GridVerdictsTest
 * -Dgolden.renew=true} and review the difference. Always, a few rows of each line are answered again, and the published figures are
 * held to what is promised.
 */
final class GridVerdictsTest {
    private static final Path TABLE = Path.of("..", "results", "reference", "grid-verdicts.csv");
    private static final boolean IS_RENEWED = Boolean.getBoolean("golden.renew");
    private static final int ROWS = 2000;
    private static final int FEW_ROWS = 10;

    /** Where stopping could do harm: enough to see it if {@code DeadlineSides} stopped as soon as a side is told with 95 %. */
    private static final int MORE_ROWS = 250;

    private static final int MOST_TRIALS = 100_000;

    /**
     * On what share of the rows the last columns may be wrong; 7 of 100 for an interval looked at again and again, as in {@code
     * stopping-coverage.csv}.
     */
    private static final List<Double> ACCEPTED = List.of(0.05, 0.05, 0.05, 0.07);

    private static final double SIGMA = 0.4;
    private static final double GIVES_UP = 0.01;

    private static final Map<String, PrecisionGoal> GOALS = new LinkedHashMap<>();

    static {
        GOALS.put("P(deadline) within 5 points", new PrecisionGoal.DeadlineChances(0.05));
        GOALS.put("P(deadline) within 2 points", new PrecisionGoal.DeadlineChances(0.02));
        GOALS.put(
                "P(deadline) above or below 90 % within 2 points",
                new PrecisionGoal.DeadlineSides(GridTally.SURE, 0.02));
    }

    /**
     * What is simulated.
     *
     * @param chance of the deadline with the quickest mode
     * @param factors by how much each mode is slower than the quickest, which is the first
     */
    private record Setting(String name, double chance, List<Double> factors) {
        /** Whether a verdict is as often wrong as it can be. */
        boolean isClose() {
            return Math.abs(chance - GridTally.SURE) < 0.001;
        }

        double deadlineSeconds() {
            return 100
                    * Math.exp(NormalDistribution.of(0, SIGMA).inverseCumulativeProbability(chance / (1 - GIVES_UP)));
        }

        List<String> modes() {
            return IntStream.range(0, factors.size()).mapToObj(i -> "m" + i).toList();
        }

        /** The modes that no other is better than. */
        List<String> best() {
            return IntStream.range(0, factors.size())
                    .filter(i -> factors.get(i) == 1)
                    .mapToObj(i -> "m" + i)
                    .toList();
        }

        /** Log-normal times of which half of the variance is the common sky's. */
        List<SessionResult> sessions(UniformRandomProvider random) {
            ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
            double common = normal.sample();
            return factors.stream()
                    .mapToDouble(it -> 100 * it * Math.exp(SIGMA * Math.sqrt(0.5) * (common + normal.sample())))
                    .mapToObj(it ->
                            random.nextDouble() < GIVES_UP ? InventedStudy.gaveUp(600) : InventedStudy.delivered(it))
                    .toList();
        }
    }

    private static final List<Setting> SETTINGS = List.of(
            new Setting("9 of 10 just missed; 1 mode", 0.8999, List.of(1.0)),
            new Setting("9 of 10 just missed; 3 modes alike", 0.8999, List.of(1.0, 1.0, 1.0)),
            new Setting("9 of 10 just kept; 1 mode", 0.9001, List.of(1.0)),
            new Setting(
                    "9 of 10 just kept; 3 modes 10 % slower each than the one before", 0.9001, List.of(1.0, 1.1, 1.21)),
            new Setting("kept by 98.5 of 100; 2 modes alike", 0.985, List.of(1.0, 1.0)),
            new Setting("kept by 95 of 100; 2 modes alike", 0.95, List.of(1.0, 1.0)),
            new Setting("kept by 80 of 100; 2 modes alike", 0.8, List.of(1.0, 1.0)),
            new Setting("kept by 50 of 100; 2 modes alike", 0.5, List.of(1.0, 1.0)));

    @TempDir
    private Path folder = Path.of("");

    @Test
    void verdictsAreWrongNoMoreOftenThanTheyAreMadeToBe() throws IOException {
        List<String> lines = new ArrayList<>(
                List.of(
                        "# Verdicts of grid --precision on rows of invented sessions whose truth is known: each row stops as soon as its goal is reached.",
                        "# Wrong: shares of the rows. Kept: on 9 of 10 trials, which no mode does. Missed: with every mode, though one keeps it. Parted: a mode is",
                        "# left out though none is better. Range: the chance of the deadline's, made to miss 0.05. Accepted: 0.05, 0.05, 0.05, 0.07.",
                        "goal,setting,rows,trials a row,kept,missed,open,wrongly kept,wrongly missed,wrongly parted,range misses"));
        int seed = 8200;
        for (Map.Entry<String, PrecisionGoal> goal : GOALS.entrySet()) {
            for (Setting setting : SETTINGS) {
                boolean isCritical = goal.getValue() instanceof PrecisionGoal.DeadlineSides && setting.isClose();
                int few = isCritical ? MORE_ROWS : FEW_ROWS;
                lines.add(goal.getKey() + "," + line(goal.getValue(), setting, IS_RENEWED ? ROWS : few, seed++));
            }
        }
        if (IS_RENEWED) {
            Files.write(TABLE, lines);
        }
        List<String> published = Files.readAllLines(TABLE);
        assertEquals(lines.subList(0, 4), published.subList(0, 4));
        assertEquals(lines.size(), published.size());
        for (int i = 4; i < lines.size(); i++) {
            assertHolds(lines.get(i));
            assertHolds(published.get(i));
            assertEquals(
                    cells(lines.get(i)).subList(0, 2), cells(published.get(i)).subList(0, 2));
        }
    }

    @Test
    void whereAVerdictIsClearFewerTrialsDo() throws IOException {
        Map<String, Double> trials = Files.readAllLines(TABLE).stream()
                .skip(4)
                .map(GridVerdictsTest::cells)
                .collect(Collectors.toMap(it -> it.get(0) + it.get(1), it -> Double.parseDouble(it.get(3))));
        String clear = "kept by 50 of 100; 2 modes alike";
        // The first look is at 400; within 2 points takes 2,400 there (stopping-coverage.csv).
        assertEquals(400.0, trials.get("P(deadline) above or below 90 % within 2 points" + clear));
        assertEquals(2400.0, trials.get("P(deadline) within 2 points" + clear));
    }

    private static List<String> cells(String line) {
        return List.of(line.split(",", -1));
    }

    /** Fewer than 1 in 1000 right programs err so often at the accepted rate. */
    private static void assertHolds(String line) {
        List<String> cells = cells(line);
        int rows = Integer.parseInt(cells.get(2));
        for (int i = 0; i < ACCEPTED.size(); i++) {
            int times = (int) Math.round(Double.parseDouble(cells.get(7 + i)) * rows);
            double chanceOfSoMany =
                    1 - new BinomialDistribution(rows, ACCEPTED.get(i)).cumulativeProbability(times - 1);
            assertTrue(chanceOfSoMany > 0.001, line);
        }
    }

    private String line(PrecisionGoal goal, Setting setting, int rows, long seed) throws IOException {
        List<CaseRow> cases = IntStream.range(0, rows)
                .mapToObj(i -> CaseTable.of(i + 2, List.of("label.row"), List.of("r" + i)))
                .toList();
        Transfer transfer = new Transfer(
                "letter", InventedStudy.LETTER.files(), List.of(Direction.UPLOAD), List.of(setting.deadlineSeconds()));
        Scenario scenario =
                InventedStudy.scenario(MOST_TRIALS, transfer, setting.modes().toArray(String[]::new));
        AtomicLong trials = new AtomicLong();
        LineStore lines = LineStore.in(Journal.begin(folder.resolve("journal " + seed), "test"), "rows");
        TrialPool.of(2)
                .run(
                        rows,
                        row -> {
                            StudyResult result = study(scenario, goal, setting, seed << 32 | row);
                            trials.addAndGet(result.trialsDone());
                            return GridColumns.lines(cases.get(row), scenario, StudySummary.of(result));
                        },
                        lines);
        CaseTable table = new CaseTable("invented", List.of("label.row"), cases);
        GridTally.OfCase tally = GridTally.of(table, GridColumns.heads(table.heads(), scenario), lines)
                .cases()
                .get(0);
        GridTally.OfDeadline deadline = tally.deadlines().get(0);
        AtomicLong missing = new AtomicLong();
        AnsweredCase.forEach(GridColumns.heads(table.heads(), scenario), 1, lines, it -> {
            Estimate chance = it.modes().get(0).deadlines().get(0).chance();
            boolean holds = chance.low() <= setting.chance() && setting.chance() <= chance.high();
            missing.addAndGet(holds ? 0 : 1);
        });
        boolean isKept = setting.chance() >= GridTally.SURE;
        int parted = tally.rowsByLeaders().entrySet().stream()
                .filter(it -> !it.getKey().containsAll(setting.best()))
                .mapToInt(Map.Entry::getValue)
                .sum();
        return String.format(
                Locale.ROOT,
                "%s,%d,%.0f,%.4f,%.4f,%.4f,%.4f,%.4f,%.4f,%.4f",
                setting.name(),
                rows,
                trials.doubleValue() / rows,
                (double) deadline.kept() / rows,
                (double) deadline.missed() / rows,
                (double) deadline.open() / rows,
                isKept ? 0.0 : (double) deadline.kept() / rows,
                isKept ? (double) deadline.missed() / rows : 0.0,
                (double) parted / rows,
                missing.doubleValue() / rows);
    }

    private static StudyResult study(Scenario scenario, PrecisionGoal goal, Setting setting, long seed) {
        return new StudyRunner(
                        scenario,
                        trial -> setting.sessions(new TrialStreams(seed, trial).open(Purpose.FADING, 0)),
                        1,
                        (done, asked) -> {},
                        () -> false)
                .runUntil(RowStore.nameless(), goal, MOST_TRIALS);
    }
}
