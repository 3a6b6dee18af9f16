package org.ionohaul.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.ionohaul.analysis.Difference.Fifth;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.session.SessionResult;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.InventedStudy;
import org.ionohaul.study.KeySweep;
import org.ionohaul.study.PlannedPoint;
import org.ionohaul.study.StudyResult;
import org.ionohaul.trial.EndSky;
import org.ionohaul.trial.TrialSky;
import org.ionohaul.trial.UncertainDraws;
import org.junit.jupiter.api.Test;

/**
 * How often what is said of a case is wrong when whole studies are repeated: modes named, times to plan for, "alike within",
 * "mostly because", shares of luck, fifths of the sky.
 *
 * <p>The table is kept in {@code results/reference/verdict-coverage.csv}; renew it with {@code mvn test
 * -Dtest=VerdictCoverageTest -Dgolden.renew=true} (ten minutes) and review the difference. Always, each line is repeated, the
 * oftener the fewer trials its studies have, and the published figures are held to what is promised.
 */
final class VerdictCoverageTest {
    private static final Path TABLE = Path.of("..", "results", "reference", "verdict-coverage.csv");
    private static final boolean IS_RENEWED = Boolean.getBoolean("golden.renew");
    private static final int REPETITIONS = 4000;
    /** Of each line at every build: 300 studies of 60 trials, 18 of 1000. */
    private static final int FEW_TRIALS = 18_000;

    private static final List<Double> DEADLINES = List.of(130.0, 200.0);
    private static final double SIGMA = 0.4;
    private static final double ACCEPTED = 0.05;

    /** What a study claims: nothing, something true or something false. */
    private enum Claim {
        NONE,
        TRUE,
        FALSE;

        static Claim of(boolean isTrue) {
            return isTrue ? TRUE : FALSE;
        }
    }

    /** One study, with its own chance. */
    @FunctionalInterface
    private interface Study {
        Claim claim(Sky sky);
    }

    private record Experiment(String claim, String setting, int trials, Study study) {}

    private static List<Experiment> experiments() {
        List<Experiment> all = new ArrayList<>();
        for (int trials : new int[] {60, 250}) {
            for (int modes : new int[] {2, 4}) {
                double[] factors = IntStream.range(0, modes).mapToDouble(i -> 1).toArray();
                all.add(new Experiment(
                        "a mode named alone is better",
                        modes + " modes alike",
                        trials,
                        sky -> named(sky, trials, factors)));
            }
            all.add(new Experiment(
                    "a mode named alone is better",
                    "2 modes alike; a third 1.5 times slower",
                    trials,
                    sky -> named(sky, trials, 1, 1, 1.5)));
            all.add(new Experiment(
                    "the best mode is among those named",
                    "3 modes 5 % slower each than the one before",
                    trials,
                    sky -> bestIsKept(sky, trials, 1, 1.05, 1.1)));
            all.add(new Experiment(
                    "modes are alike within so much",
                    "2 modes; one 10 % slower",
                    trials,
                    sky -> alike(sky, trials, 1.1)));
        }
        for (int trials : new int[] {100, 250, 1000}) {
            all.add(new Experiment("19 of 20 trials keep the plan", "1 mode", trials, sky -> plan(sky, trials, 1)));
            all.add(new Experiment(
                    "19 of 20 trials keep the plan", "4 modes alike", trials, sky -> plan(sky, trials, 1, 1, 1, 1)));
        }
        for (int trials : new int[] {60, 250}) {
            all.add(new Experiment(
                    "mostly because", "the cause makes half of the lead", trials, sky -> mostly(sky, trials)));
        }
        for (int trials : new int[] {100, 400}) {
            all.add(new Experiment(
                    "share of an input",
                    "a third of the variance",
                    trials,
                    sky -> Claim.of(covers(split(sky, trials).inputs().get(0).share(), TRUE_SHARE))));
            all.add(new Experiment(
                    "share of luck",
                    "a third of the variance",
                    trials,
                    sky -> Claim.of(covers(split(sky, trials).rest(), 1 - 2 * TRUE_SHARE))));
            all.add(new Experiment(
                    "swing of a deadline's chance by an input",
                    "a third of the variance",
                    trials,
                    sky -> Claim.of(
                            covers(split(sky, trials).inputs().get(0).swings().get(0), TRUE_SWING))));
        }
        all.add(new Experiment(
                "how often a mode is first on the fifth that differs most",
                "lead rises with SNR",
                200,
                sky -> fifth(sky, 200)));
        for (int trials : new int[] {60, 250}) {
            all.add(new Experiment(
                    "so many trials keep the deadline at least", "1 mode", trials, sky -> answer(sky, trials, 1)));
            all.add(new Experiment(
                    "so many trials keep the deadline at least",
                    "4 modes alike",
                    trials,
                    sky -> answer(sky, trials, 1, 1, 1, 1)));
            all.add(new Experiment(
                    "so many trials keep the deadline at least",
                    "3 modes 5 % slower each than the one before",
                    trials,
                    sky -> answer(sky, trials, 1, 1.05, 1.1)));
        }
        for (int trials : new int[] {60, 250}) {
            all.add(new Experiment(
                    "a mode named alone anywhere in a variation is better",
                    "2 modes alike at 12 values",
                    trials,
                    sky -> namedAnywhere(sky, trials)));
            all.add(new Experiment(
                    "a change told anywhere in a variation is one",
                    "2 modes; 12 values that change nothing",
                    trials,
                    sky -> changed(sky, trials)));
            all.add(new Experiment(
                    "the key that matters most is among those named",
                    "4 keys of which each makes sending 5 % slower than the one before",
                    trials,
                    sky -> matters(sky, trials)));
        }
        return all;
    }

    @Test
    void whatIsSaidIsWrongNoMoreOftenThanItIsMadeToBe() throws IOException {
        List<String> lines = new ArrayList<>();
        lines.add(
                "claim,setting,trials,studies,studies that claim,accepted share of wrong claims,observed,standard error");
        int seed = 7100;
        for (Experiment each : experiments()) {
            lines.add(repeated(each, IS_RENEWED ? REPETITIONS : FEW_TRIALS / each.trials(), seed++));
        }
        if (IS_RENEWED) {
            Files.write(TABLE, lines);
        }
        List<String> published = Files.readAllLines(TABLE);
        assertEquals(lines.size(), published.size());
        for (int i = 1; i < lines.size(); i++) {
            assertHolds(lines.get(i));
            assertHolds(published.get(i));
            assertEquals(what(published.get(i)), what(lines.get(i)));
        }
    }

    private static String repeated(Experiment experiment, int repetitions, long seed) {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(seed);
        Sky sky = new Sky(random, ZigguratSampler.NormalizedGaussian.of(random));
        List<Claim> claims = IntStream.range(0, repetitions)
                .mapToObj(i -> experiment.study().claim(sky))
                .toList();
        double wrong = (double) claims.stream().filter(it -> it == Claim.FALSE).count() / repetitions;
        double made = (double) claims.stream().filter(it -> it != Claim.NONE).count() / repetitions;
        return String.format(
                Locale.ROOT,
                "%s,%s,%d,%d,%.3f,%.2f,%.4f,%.4f",
                experiment.claim(),
                experiment.setting(),
                experiment.trials(),
                repetitions,
                made,
                ACCEPTED,
                wrong,
                Math.sqrt(wrong * (1 - wrong) / repetitions));
    }

    /** Tolerance 3 standard errors at the accepted rate. */
    private static void assertHolds(String line) {
        String[] parts = line.split(",", -1);
        double observed = Double.parseDouble(parts[6]);
        double repetitions = Double.parseDouble(parts[3]);
        assertTrue(observed <= ACCEPTED + 3 * Math.sqrt(ACCEPTED * (1 - ACCEPTED) / repetitions), line);
    }

    private static String what(String line) {
        return String.join(",", List.of(line.split(",", -1)).subList(0, 3));
    }

    /** Chance, and the sessions that it makes: log-normal times of which half of the variance is the common sky's. */
    private record Sky(UniformRandomProvider random, ZigguratSampler.NormalizedGaussian normal) {
        private static final double GIVES_UP = 0.01;

        CaseSummary study(int trials, double... factors) {
            return CaseSummary.of(oneCase(trials, factors));
        }

        StudyResult result(int trials, double... factors) {
            CaseTrials made = oneCase(trials, factors);
            Scenario scenario = InventedStudy.scenario(
                    trials,
                    made.transfer(),
                    IntStream.range(0, factors.length).mapToObj(i -> "m" + i).toArray(String[]::new));
            return new StudyResult(scenario, List.of(made), trials, trials);
        }

        private CaseTrials oneCase(int trials, double... factors) {
            List<List<SessionResult>> sessions = IntStream.range(0, factors.length)
                    .<List<SessionResult>>mapToObj(i -> new ArrayList<>())
                    .toList();
            for (int trial = 0; trial < trials; trial++) {
                double common = normal.sample();
                for (int mode = 0; mode < factors.length; mode++) {
                    double seconds =
                            100 * factors[mode] * Math.exp(SIGMA * Math.sqrt(0.5) * (common + normal.sample()));
                    sessions.get(mode)
                            .add(
                                    random.nextDouble() < GIVES_UP
                                            ? InventedStudy.gaveUp(600)
                                            : InventedStudy.delivered(seconds));
                }
            }
            return oneCase(DEADLINES, sessions);
        }

        static CaseSummary summary(List<Double> deadlines, List<List<SessionResult>> sessions) {
            return CaseSummary.of(oneCase(deadlines, sessions));
        }

        private static CaseTrials oneCase(List<Double> deadlines, List<List<SessionResult>> sessions) {
            List<String> names =
                    IntStream.range(0, sessions.size()).mapToObj(i -> "m" + i).toList();
            return InventedStudy.oneCase(deadlines, names, sessions);
        }

        /** Share of a mode's trials that are through by then. */
        static double kept(double seconds, double factor) {
            return (1 - GIVES_UP)
                    * NormalDistribution.of(0, SIGMA).cumulativeProbability(Math.log(seconds / 100 / factor));
        }
    }

    /** Wherever a mode stands alone, overall or for a deadline, no other may be as quick. */
    private static Claim named(Sky sky, int trials, double... factors) {
        CaseSummary summary = sky.study(trials, factors);
        List<Leaders> sole = new ArrayList<>(summary.deadlineLeaders());
        sole.add(summary.leaders());
        sole.removeIf(it -> !it.isSole());
        return sole.isEmpty()
                ? Claim.NONE
                : Claim.of(sole.stream()
                        .allMatch(it -> IntStream.range(0, factors.length)
                                .noneMatch(other -> other != it.first() && factors[other] <= factors[it.first()])));
    }

    /** Points whose skies have nothing in common but what each trial's have. */
    private static List<VariationPoint> points(Sky sky, int trials, List<PlannedPoint> plan, double[]... factors) {
        PointsDone done = PointsDone.noneOf(plan.size());
        for (int i = 0; i < plan.size(); i++) {
            done = done.and(plan.get(i), sky.result(trials, factors[i % factors.length]));
        }
        return done.points();
    }

    private static List<PlannedPoint> plan(int values) {
        return IntStream.range(0, values)
                .mapToObj(i -> new PlannedPoint(Map.of("x", String.valueOf(i))))
                .toList();
    }

    private static Claim namedAnywhere(Sky sky, int trials) {
        return points(sky, trials, plan(12), new double[] {1, 1}).stream()
                        .anyMatch(it -> it.cases().get(0).leaders().isSole())
                ? Claim.FALSE
                : Claim.NONE;
    }

    private static Claim changed(Sky sky, int trials) {
        return points(sky, trials, plan(12), new double[] {1, 1}).stream()
                        .flatMap(it -> it.cases().get(0).modes().stream())
                        .map(ModePoint::effect)
                        .anyMatch(it ->
                                it.isBeyondChance() || it.mostChangedDeadline().isPresent())
                ? Claim.FALSE
                : Claim.NONE;
    }

    private static Claim matters(Sky sky, int trials) {
        List<KeySweep> sweeps = Stream.of("a", "b", "c", "d")
                .map(key -> new KeySweep(key, List.of("1", "2")))
                .toList();
        double[][] factors = {{1}, {1}, {1.1}, {1}, {1.15}, {1}, {1.2}, {1}, {1.25}};
        List<PlannedPoint> plan = Tornado.plan(sweeps);
        List<TornadoBar> mattering = Tornado.of(
                        sky.result(trials, 1).scenario(), sweeps, points(sky, trials, plan, factors))
                .mattering(0);
        return mattering.isEmpty()
                ? Claim.NONE
                : Claim.of(mattering.stream().anyMatch(it -> it.key().equals("d")));
    }

    private static Claim bestIsKept(Sky sky, int trials, double... factors) {
        CaseSummary summary = sky.study(trials, factors);
        return Claim.of(summary.leaders().modes().contains(0)
                && summary.deadlineLeaders().stream().allMatch(it -> it.modes().contains(0)));
    }

    /** Whichever of the modes named is taken, the earlier deadline must be kept on so many trials. */
    private static Claim answer(Sky sky, int trials, double... factors) {
        DeadlineAnswer answer =
                CaseAnswer.of(sky.study(trials, factors)).deadlines().get(0);
        return answer.modes().isEmpty()
                ? Claim.NONE
                : Claim.of(answer.modes().stream()
                        .mapToDouble(it -> factors[Integer.parseInt(it.name().substring(1))])
                        .allMatch(it -> Sky.kept(DEADLINES.get(0), it) >= answer.safeShare()));
    }

    private static Claim alike(Sky sky, int trials, double slower) {
        Leaders leaders = sky.study(trials, 1, slower).leaders();
        double most = DEADLINES.stream()
                .mapToDouble(it -> Sky.kept(it, 1) - Sky.kept(it, slower))
                .max()
                .orElseThrow();
        // The lead's median is near that of the difference of two log-normal times, from below: 100 (1.1 - 1) s at
        // most.
        return leaders.alike()
                .map(it -> Claim.of(it.share() >= most && it.seconds() >= MEDIAN_LEAD_SECONDS))
                .orElse(Claim.NONE);
    }

    /** Median of 100 (1.1 exp(a) - exp(b)) over trials in which at least one arrives, by a million draws. */
    private static final double MEDIAN_LEAD_SECONDS = medianLead();

    private static double medianLead() {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(7000L);
        ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
        double[] leads = IntStream.range(0, 1_000_000)
                .mapToDouble(i -> {
                    double common = Math.exp(SIGMA * Math.sqrt(0.5) * normal.sample());
                    double first = Math.exp(SIGMA * Math.sqrt(0.5) * normal.sample());
                    double second = 1.1 * Math.exp(SIGMA * Math.sqrt(0.5) * normal.sample());
                    return 100 * common * (second - first);
                })
                .sorted()
                .toArray();
        return leads[leads.length / 2];
    }

    private static Claim plan(Sky sky, int trials, double... factors) {
        CaseSummary summary = sky.study(trials, factors);
        OptionalDouble seconds = summary.best().plan().seconds();
        if (seconds.isEmpty() || Double.isInfinite(seconds.getAsDouble())) {
            return Claim.NONE;
        }
        return Claim.of(
                Sky.kept(seconds.getAsDouble(), factors[summary.ranking().get(0)]) >= 0.95);
    }

    /** Dialling takes 20 s more, sending 20 s more, in the mean: just half of the lead, whatever is said. */
    private static Claim mostly(Sky sky, int trials) {
        List<SessionResult> slow = new ArrayList<>();
        List<SessionResult> quick = new ArrayList<>();
        for (int i = 0; i < trials; i++) {
            double dialling = 20 + 5 * sky.normal().sample();
            double sending = 20 + 5 * sky.normal().sample();
            slow.add(InventedStudy.steady(40 + dialling, 2000 / (100 + sending), 2000));
            quick.add(InventedStudy.steady(40, 20, 2000));
        }
        return Sky.summary(List.of(), List.of(slow, quick))
                .verdict()
                .saved()
                .filter(SavedTime::isMostOfLead)
                .map(it -> Claim.FALSE)
                .orElse(Claim.NONE);
    }

    /** Times that are the sum of three uniform numbers, of which two are inputs that are not known. */
    private static SpreadSplit split(Sky sky, int trials) {
        Scenario scenario = InventedStudy.unknown(sky.random().nextLong() >>> 1, trials, List.of("noise", "path"));
        List<SessionResult> sessions = LongStream.range(0, trials)
                .mapToObj(trial -> UncertainDraws.of(scenario.seed(), trial))
                .map(draws -> InventedStudy.delivered(100
                        + 50 * draws.probability("noise")
                        + 50 * draws.probability("path")
                        + 50 * sky.random().nextDouble()))
                .toList();
        CaseTrials ofCase = InventedStudy.oneCase(List.of(), List.of("hare"), List.of(sessions));
        return SpreadSplit.of(scenario, List.of(HALF_KEPT), ofCase.modes().get(0))
                .orElseThrow();
    }

    /** The middle of 100 to 250 s. */
    private static final double HALF_KEPT = 175;

    private static boolean covers(Estimate estimate, double truth) {
        return estimate.low() <= truth && truth <= estimate.high();
    }

    /** Variance over the input, on a fine grid, of the mean of something given the input. */
    private static double varianceOfMean(DoubleUnaryOperator meanGivenInput) {
        double[] means = IntStream.range(0, 1000)
                .mapToDouble(i -> meanGivenInput.applyAsDouble((i + 0.5) / 1000))
                .toArray();
        double mean = Arrays.stream(means).average().orElseThrow();
        return Arrays.stream(means)
                .map(it -> (it - mean) * (it - mean))
                .average()
                .orElseThrow();
    }

    /** Distribution of the sum of two uniform numbers. */
    private static double belowOfTwo(double x) {
        return x <= 0 ? 0 : x < 1 ? x * x / 2 : x < 2 ? 1 - (2 - x) * (2 - x) / 2 : 1;
    }

    /** Distribution of the sum of three. */
    private static double belowOfThree(double x) {
        return IntStream.range(0, 200)
                .mapToDouble(i -> belowOfTwo(x - (i + 0.5) / 200))
                .average()
                .orElseThrow();
    }

    /** Share of the variance of ranks, 1/12, that goes with one of three uniform numbers: 0.32. */
    private static final double TRUE_SHARE = 12
            * varianceOfMean(input -> IntStream.range(0, 100)
                            .mapToDouble(i -> belowOfThree(input + 2 * (i + 0.5) / 100) * triangle(2 * (i + 0.5) / 100))
                            .sum()
                    / 50);

    /** Density of the sum of two uniform numbers. */
    private static double triangle(double x) {
        return Math.min(x, 2 - x);
    }

    private static final double TRUE_SWING = Math.sqrt(varianceOfMean(input -> belowOfTwo(1.5 - input)));

    /** The first is ahead by 10 s a standard deviation of the far end's SNR, give or take 10 s. */
    private static Claim fifth(Sky sky, int trials) {
        List<TrialSky> skies = new ArrayList<>();
        double[] first = new double[trials];
        double[] second = new double[trials];
        for (int i = 0; i < trials; i++) {
            double snr = sky.normal().sample();
            skies.add(new TrialSky(new EndSky(0, 0, 0), new EndSky(snr, 0, 0)));
            first[i] = 100;
            second[i] = 100 + 10 * snr + 10 * sky.normal().sample();
        }
        Fifth most = Difference.of(Direction.UPLOAD, 600, skies, first, second)
                .map(Difference::most)
                .orElseThrow();
        // The chance to be first, given the SNR, is the normal distribution at it: its own quantile.
        double truth = (most.place() + 0.5) / 5;
        return Claim.of(covers(most.firstBefore(), truth));
    }
}
