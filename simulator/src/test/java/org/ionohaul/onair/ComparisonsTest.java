package org.ionohaul.onair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.ionohaul.statistics.PairedOdds;
import org.ionohaul.statistics.SignTestStops;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Comparisons without any sky, whose chances are known exactly. */
final class ComparisonsTest {
    private static final int COMPARISONS = 4000;
    private static final Criterion SOONER = new Criterion(OptionalDouble.empty());
    private static final Runs.Timetable AT_ONCE = new Runs.Timetable(0, 180_000_000_000L);

    private static Comparisons of(LongFunction<Evening> skies, int modes, Criterion criterion, Design... designs) {
        return new Comparisons(modes, List.of(skies), criterion, AT_ONCE, 0.05, 3, List.of(designs));
    }

    private static List<Verdicts> made(Comparisons comparisons, int count) {
        return IntStream.range(0, count).mapToObj(comparisons::make).toList();
    }

    private static void assertChance(double expected, int hits, int of, String what) {
        // Four standard errors, and one hit for chances near nothing.
        double tolerance = 4 * Math.sqrt(expected * (1 - expected) / of) + 1.0 / of;
        assertEquals(expected, (double) hits / of, tolerance, what);
    }

    /** The first mode wins 7 of 10 rounds: of 10 rounds the sign test asks for 9 (p 0.021; 8 has 0.109). */
    @ParameterizedTest
    @EnumSource(RunOrder.class)
    void theSignTestIsTheBinomialDistributionInEveryOrder(RunOrder order) {
        MadeUpEvenings skies = new MadeUpEvenings(List.of(300.0, 700.0), 0);
        assertEquals(0.7, skies.firstSooner());
        Comparisons comparisons = of(skies, 2, SOONER, new Design(0, order, 10), new Design(0, order, 1));
        List<Verdicts> verdicts = made(comparisons, COMPARISONS);
        RuleResult ten = DesignResult.of(comparisons, 0, verdicts).by(Rule.PAIRED);
        RuleResult one = DesignResult.of(comparisons, 1, verdicts).by(Rule.BARE);
        BinomialDistribution wins = BinomialDistribution.of(10, 0.7);
        assertChance(wins.survivalProbability(8), ten.named().get(0), COMPARISONS, "right");
        assertChance(wins.cumulativeProbability(1), ten.named().get(1), COMPARISONS, "wrong");
        assertChance(22.0 / 1024, ten.selfNamed().get(0) + ten.selfNamed().get(1), COMPARISONS, "false alarms");
        assertChance(0.7, one.named().get(0), COMPARISONS, "one run each");
        assertChance(0.5, one.selfNamed().get(0), COMPARISONS, "one run each of one mode");
    }

    /** A tenth of the runs never gets through: 81 rounds of 100 go by time, 9 to either side, one to neither. */
    @Test
    void aRunThatFailsLosesItsRound() {
        MadeUpEvenings skies = new MadeUpEvenings(List.of(300.0, 700.0), 0.1);
        Comparisons comparisons = of(skies, 2, SOONER, new Design(0, RunOrder.BY_LOT, 10));
        DesignResult result = DesignResult.of(comparisons, 0, made(comparisons, COMPARISONS));
        PairedOdds odds = new PairedOdds(0.81 * 0.7 + 0.09, 0.81 * 0.3 + 0.09);
        assertChance(odds.first(), result.wins().get(0).get(1), result.rounds(), "rounds won");
        assertChance(odds.second(), result.wins().get(1).get(0), result.rounds(), "rounds lost");
        assertChance(odds.named(10, 0.05), result.by(Rule.PAIRED).named().get(0), COMPARISONS, "right");
    }

    /** Deadlines kept by 1 - exp(-t / mean): McNemar's exact test over the rounds that just one mode kept. */
    @Test
    void withADeadlineItIsMcNemarsTest() {
        double deadline = 300;
        double first = 1 - Math.exp(-deadline / 150);
        double second = 1 - Math.exp(-deadline / 700);
        Comparisons comparisons = of(
                new MadeUpEvenings(List.of(150.0, 700.0), 0),
                2,
                new Criterion(OptionalDouble.of(deadline)),
                new Design(0, RunOrder.ROUND_AN_EVENING, 10));
        RuleResult result =
                DesignResult.of(comparisons, 0, made(comparisons, COMPARISONS)).by(Rule.PAIRED);
        PairedOdds odds = new PairedOdds(first * (1 - second), second * (1 - first));
        assertChance(odds.named(10, 0.05), result.named().get(0), COMPARISONS, "right");
    }

    @Test
    void stoppingEarlyIsWhatTheExactSumsSay() {
        Comparisons comparisons =
                of(new MadeUpEvenings(List.of(200.0, 800.0), 0), 2, SOONER, new Design(0, RunOrder.TAKING_TURNS, 10));
        List<StopResult> results = StopResult.all(comparisons, made(comparisons, COMPARISONS));
        assertEquals(3, results.size());
        for (StopResult result : results) {
            SignTestStops stops = result.stop().within(10, 0.05);
            SignTestStops.Chances chances = stops.chances(0.8);
            assertChance(chances.first(), result.named().get(0), COMPARISONS, result.stop() + " right");
            assertChance(chances.second(), result.named().get(1), COMPARISONS, result.stop() + " wrong");
            assertChance(stops.chances(0.5).named(), result.selfNamed(), COMPARISONS, result.stop() + " false alarms");
            // A number of rounds from 1 to 10 has a deviation below 4.5.
            assertEquals(chances.meanPairs(), result.meanRounds(), 4 * 4.5 / Math.sqrt(COMPARISONS));
        }
    }

    /** Three like modes: any rule but the bare one names one of them on at most 5 of 100, plus 4 standard errors. */
    @Test
    void ofThreeLikeModesNoTestNamesOneTooOften() {
        Comparisons comparisons = of(
                new MadeUpEvenings(List.of(300.0, 300.0, 300.0), 0.1), 3, SOONER, new Design(0, RunOrder.BY_LOT, 10));
        DesignResult result = DesignResult.of(comparisons, 0, made(comparisons, COMPARISONS));
        for (Rule rule : List.of(Rule.PAIRED, Rule.UNPAIRED)) {
            int named = result.by(rule).named().stream().mapToInt(it -> it).sum();
            assertTrue(named <= COMPARISONS * 0.05 + 4 * Math.sqrt(COMPARISONS * 0.05 * 0.95), rule + ": " + named);
        }
        assertTrue(result.by(Rule.BARE).answering().value() > 0.9);
    }

    /** The sky turns bad with the first run's end: who goes first wins, whatever the mode, and the lot only shares that out. */
    @Test
    void aStepOfTheSkyDecidesOneRunEach() {
        LongFunction<Evening> step = trial ->
                (mode, repeat, startNanos) -> new Run(startNanos == 0 ? 100 + mode : 500 - 10 * mode, 600_000_000_000L);
        Comparisons comparisons = of(
                step,
                2,
                SOONER,
                new Design(0, RunOrder.TAKING_TURNS, 1),
                new Design(0, RunOrder.TURNS_REVERSED, 1),
                new Design(0, RunOrder.MIRRORED, 2),
                new Design(0, RunOrder.RUN_AN_EVENING, 1),
                new Design(0, RunOrder.BY_LOT, 1));
        List<Verdicts> verdicts = made(comparisons, 400);
        List<RuleResult> bare = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            bare.add(DesignResult.of(comparisons, i, verdicts).by(Rule.BARE));
        }
        assertEquals(List.of(400, 0), bare.get(0).named());
        assertEquals(List.of(400, 0), bare.get(0).selfNamed(), "one mode under two names: the first name");
        assertEquals(List.of(0, 400), bare.get(1).named());
        assertEquals(List.of(400, 0), bare.get(2).named(), "100 and 500 against 490 and 490: A B B A cures no step");
        assertEquals(List.of(400, 0), bare.get(3).named(), "each at the start");
        assertChance(0.5, bare.get(4).named().get(0), 400, "the lot");
    }

    /** Runs of 10 and 20 min with 3 min between: A B A B lasts 69 min, the air is theirs for 60. */
    @Test
    void airTimeAndEveningsAreCounted() {
        LongFunction<Evening> steady =
                trial -> (mode, repeat, startNanos) -> new Run(600.0 * (mode + 1), 600_000_000_000L * (mode + 1));
        Comparisons comparisons = of(
                steady, 2, SOONER, new Design(0, RunOrder.TAKING_TURNS, 2), new Design(0, RunOrder.RUN_AN_EVENING, 2));
        List<Verdicts> verdicts = made(comparisons, 2);
        DesignResult turns = DesignResult.of(comparisons, 0, verdicts);
        assertEquals(3600, turns.airSeconds());
        assertEquals(3600 + 3 * 180, turns.eveningSeconds());
        assertEquals(1, turns.evenings());
        DesignResult evenings = DesignResult.of(comparisons, 1, verdicts);
        assertEquals(3600, evenings.airSeconds());
        assertEquals(1200, evenings.eveningSeconds());
        assertEquals(4, evenings.evenings());
    }
}
