package org.ionohaul.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.session.Cause;
import org.ionohaul.session.Ending;
import org.ionohaul.session.Outcome;
import org.ionohaul.session.SessionResult;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.statistics.Proportion;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.InventedStudy;
import org.junit.jupiter.api.Test;

/** What a case's trials come to, by hand from invented sessions. */
final class CaseSummaryTest {
    private static final double NEVER = Double.POSITIVE_INFINITY;

    /** 14 deliveries at 10, 20 ... 140 s, 4 break-offs and 2 still running, of 20. */
    private final ModeSummary mixed = CaseSummary.of(
                    InventedStudy.oneCase(List.of(60.0, 120.0), List.of("hare"), List.of(mixedSessions())))
            .best();

    private static List<SessionResult> mixedSessions() {
        Stream<SessionResult> delivered = IntStream.rangeClosed(1, 14).mapToObj(i -> InventedStudy.delivered(10 * i));
        Stream<SessionResult> gaveUp = IntStream.range(0, 4).mapToObj(i -> InventedStudy.gaveUp(15));
        Stream<SessionResult> running = IntStream.range(0, 2).mapToObj(i -> InventedStudy.running(3600));
        return Stream.of(delivered, gaveUp, running).flatMap(it -> it).toList();
    }

    @Test
    void everyTrialHasOneOutcome() {
        assertEquals(
                List.of(14, 0, 0, 0, 4, 2),
                mixed.outcomes().stream().map(it -> it.count().hits()).toList());
        assertEquals(
                List.of(Outcome.values()),
                mixed.outcomes().stream().map(OutcomeShare::outcome).toList());
        assertEquals(0.7, mixed.delivered().value());
    }

    @Test
    void thoseThatNeverArriveCountAmongTheTimes() {
        assertEquals(20, mixed.tenthSeconds().value());
        assertEquals(100, mixed.medianSeconds().value());
        assertEquals(NEVER, mixed.ninthSeconds().value());
        // Ranks 6 and 15 of 20: the table value for the median.
        assertEquals(60, mixed.medianSeconds().low());
        assertEquals(NEVER, mixed.medianSeconds().high());
    }

    @Test
    void deadlinesCountThoseThatNeverArriveAsMissed() {
        assertEquals(new Proportion(6, 20), mixed.deadlines().get(0).count());
        assertEquals(new Proportion(12, 20), mixed.deadlines().get(1).count());
    }

    @Test
    void paceIsBytesOverTheMedianTime() {
        assertEquals(2000 / (100 / 60.0), mixed.medianBytesPerMinute().value(), 1e-9);
        assertEquals(0, mixed.medianBytesPerMinute().low());
        assertEquals(2000, mixed.medianBytesPerMinute().high(), 1e-9);
    }

    @Test
    void timeBudgetSumsToTheElapsedTime() {
        assertEquals((1050 + 4 * 15 + 2 * 3600) / 20.0, mixed.meanElapsedSeconds(), 1e-9);
        assertEquals(
                mixed.meanElapsedSeconds(),
                mixed.causes().stream().mapToDouble(CauseTime::meanSeconds).sum(),
                1e-9);
        assertEquals(
                new CauseTime(Cause.DIALLING, 14 * 5 / 20.0), mixed.causes().get(0));
    }

    @Test
    void dataRatesShareTheAirtime() {
        assertEquals(List.of(new DataRateShare(1, 1, 14 * 20, 14 * 4)), mixed.dataRates());
    }

    @Test
    void theModeThatKeepsDeadlinesIsBest() {
        CaseSummary summary = summary(List.of(60.0), "hare", many(70), "tortoise", many(50), "snail", many(90));
        assertEquals(List.of(1, 0, 2), summary.ranking());
        assertEquals("tortoise", summary.best().mode().name());
        assertEquals(
                List.of("hare", "snail"),
                summary.comparisons().stream().map(Comparison::second).toList());
    }

    @Test
    void withoutDeadlinesTheModeThatArrivesMoreOftenIsBest() {
        List<SessionResult> fastButFickle =
                Stream.concat(many(20).stream().limit(30), failures().limit(10)).toList();
        CaseSummary summary = summary(List.of(), "hare", fastButFickle, "tortoise", many(90));
        assertEquals(List.of(1, 0), summary.ranking());
        assertEquals(Verdict.Reason.MORE_ARRIVES, summary.verdict().reason());
        assertEquals(Optional.empty(), summary.verdict().saved());
        assertEquals(Side.FIRST, summary.verdict().moreArrives());
    }

    /** 6 of 40 fail, all under skies that the other survives: the intervals 71-93 % and 91-100 % overlap, p = 0.03. */
    @Test
    void deliveredSharesAreComparedTrialByTrialNotByTheirIntervals() {
        List<SessionResult> fickle =
                Stream.concat(many(20).stream().limit(34), failures().limit(6)).toList();
        CaseSummary summary = summary(List.of(), "hare", fickle, "tortoise", many(90));
        assertTrue(summary.modes().get(0).delivered().high()
                > summary.modes().get(1).delivered().low());
        assertEquals(0.03125, summary.comparisons().get(0).delivered().exactPValue(), 1e-12);
        assertEquals(Verdict.Reason.MORE_ARRIVES, summary.verdict().reason());
    }

    /** Both miss no deadline because of the two of forty that fail: 180 s more are what makes the difference. */
    @Test
    void whereTimeMakesMostOfTheDifferenceItIsNamedThoughMoreArrives() {
        List<SessionResult> slowAndFickle =
                Stream.concat(many(200).stream().limit(34), failures().limit(6)).toList();
        Verdict verdict = summary(List.of(60.0), "hare", slowAndFickle, "tortoise", many(20))
                .verdict();
        assertEquals(Verdict.Reason.LESS_TIME, verdict.reason());
        assertEquals(Side.FIRST, verdict.moreArrives());
    }

    @Test
    void failuresAreToldApart() {
        List<SessionResult> sessions = List.of(
                InventedStudy.neverLinked(Ending.NEVER_LINKED, 5),
                InventedStudy.neverLinked(Ending.NEVER_LINKED_OUT_OF_PATIENCE, 10),
                InventedStudy.gaveUp(9),
                InventedStudy.gaveUp(9),
                InventedStudy.outOfPatience(10),
                InventedStudy.running(10),
                InventedStudy.delivered(9),
                InventedStudy.delivered(10));
        CaseTrials trials = InventedStudy.oneCase(List.of(), List.of("hare"), List.of(sessions));
        Failures failures = CaseSummary.of(trials).best().failures();
        assertEquals(new Proportion(2, 8), failures.neverLinked());
        assertEquals(new Proportion(2, 8), failures.linksLost());
        assertEquals(new Proportion(1, 8), failures.outOfPatience());
        assertEquals(new Proportion(1, 8), failures.stillSending());
        assertEquals(new Proportion(1, 8), failures.of(Ending.NEVER_LINKED_OUT_OF_PATIENCE));
    }

    /** One that lost its link with all bytes over there failed because some are wrong. */
    @Test
    void wrongDeliveriesAreAFailureOfTheirOwnAndToldOnlyWhereThereAreAny() {
        List<SessionResult> sessions = List.of(
                InventedStudy.deliveredWrong(Ending.COMPLETED, 9),
                InventedStudy.deliveredWrong(Ending.LINK_LOST, 9),
                InventedStudy.gaveUp(9),
                InventedStudy.delivered(10));
        CaseTrials trials = InventedStudy.oneCase(List.of(), List.of("hare"), List.of(sessions));
        ModeSummary mode = CaseSummary.of(trials).best();
        assertEquals(new Proportion(2, 4), mode.failures().deliveredWrong());
        assertEquals(new Proportion(1, 4), mode.failures().linksLost());
        assertEquals(0.25, mode.delivered().value());
        assertTrue(OutcomeShare.told(List.of(mode)).contains(Outcome.DELIVERED_WRONG));
        assertEquals(
                Outcome.values().length - 1, OutcomeShare.told(List.of(mixed)).size());
    }

    /** Without a deadline one file more tells nothing (p = 1); the first is sooner on the 39 others. */
    @Test
    void whereSurenessHangsOnATrialTheUsualWinnerIsFirst() {
        List<SessionResult> quick =
                Stream.concat(many(20).stream().limit(39), failures().limit(1)).toList();
        CaseSummary summary = summary(List.of(), "tortoise", many(90), "hare", quick);
        assertEquals("hare", summary.best().mode().name());
        assertEquals(Verdict.Standing.SOONER, summary.verdict().standing());
        assertEquals(Side.NEITHER, summary.verdict().moreArrives());
    }

    /** Ten of forty miss the deadline, p = 2 / 2^10; the other thirty are sooner, p = 0.002 as well. */
    @Test
    void theSurerModeIsBestThoughItIsUsuallyTheLater() {
        List<SessionResult> fickle = Stream.concat(
                        many(20).stream().limit(30), many(80).stream().limit(10))
                .toList();
        CaseSummary summary = summary(List.of(60.0), "hare", fickle, "tortoise", many(50));
        assertEquals("tortoise", summary.best().mode().name());
        assertEquals(Verdict.Standing.SURER, summary.verdict().standing());
        assertEquals(Side.SECOND, summary.verdict().usuallyFirst());
        assertTrue(summary.leaders().isSole());
    }

    /** 20 of 40 at 50 s and 20 at 130 s, against 90 s always: the first keeps 60 s more often, the other 120 s. */
    @Test
    void whereEachKeepsADeadlineMoreOftenBothAreNamed() {
        List<SessionResult> wide = Stream.concat(
                        many(50).stream().limit(20), many(130).stream().limit(20))
                .toList();
        CaseSummary summary = summary(List.of(60.0, 120.0), "hare", wide, "tortoise", many(90));
        assertEquals(Verdict.Standing.MIXED, summary.verdict().standing());
        assertEquals(List.of(1, 0), summary.leaders().modes());
        assertEquals(List.of(0), summary.deadlineLeaders().get(0).modes());
        assertEquals(List.of(1), summary.deadlineLeaders().get(1).modes());
    }

    /** A beats C on every trial; that B can't be told from A is not shown by A and C. */
    @Test
    void aModeThatCantBeToldFromTheBestIsNamedBesideItThoughAThirdLiesFarBehind() {
        CaseSummary summary = summary(List.of(100.0), "hare", many(50), "snail", many(300), "tortoise", many(50));
        assertEquals(List.of(0, 2), summary.leaders().modes());
        assertEquals(List.of(0, 2, 1), summary.ranking());
        assertEquals(0, summary.leaders().alike().orElseThrow().seconds());
    }

    /** Largest of 85 bounds the 95th of 100 with 98.72 %, of 86 with 98.79 %: four modes want 98.75 %. */
    @Test
    void theTimeToPlanForIsSafeWhicheverOfTheModesIsTaken() {
        SafeTime few = SafeTime.of(0.95, OrderedSample.of(rising(85)), 4);
        assertEquals(86, few.fewestTrials());
        assertEquals(OptionalDouble.empty(), few.seconds());
        assertEquals(
                OptionalDouble.of(86),
                SafeTime.of(0.95, OrderedSample.of(rising(86)), 4).seconds());
        // One mode alone: the table of one-sided tolerance limits has the largest of 59 and the second largest of 93.
        assertEquals(
                OptionalDouble.of(59),
                SafeTime.of(0.95, OrderedSample.of(rising(59)), 1).seconds());
        assertEquals(
                OptionalDouble.of(92),
                SafeTime.of(0.95, OrderedSample.of(rising(92)), 1).seconds());
        assertEquals(
                OptionalDouble.of(92),
                SafeTime.of(0.95, OrderedSample.of(rising(93)), 1).seconds());
    }

    private static double[] rising(int size) {
        return IntStream.rangeClosed(1, size).asDoubleStream().toArray();
    }

    @Test
    void everyPairIsComparedTheBestFirst() {
        CaseSummary summary = summary(List.of(60.0), "hare", many(70), "tortoise", many(50), "snail", many(90));
        assertEquals(
                List.of("tortoise hare", "tortoise snail", "hare snail"),
                summary.pairs().stream()
                        .map(it -> it.first() + " " + it.second())
                        .toList());
        assertEquals(summary.pairs().subList(2, 3), summary.otherPairs());
    }

    @Test
    void theVerdictNamesWhereTheTimeIsSaved() {
        Verdict verdict =
                summary(List.of(), "hare", many(200), "tortoise", many(20)).verdict();
        assertEquals(Verdict.Reason.LESS_TIME, verdict.reason());
        assertEquals(
                new SavedTime(new CauseTime(Cause.NEW_PAYLOAD, 180), 180, true, 40),
                verdict.saved().orElseThrow());
    }

    /** Half of the lead from the one cause and half from the other: nothing is most of it. */
    @Test
    void halfOfTheLeadIsNotMostOfIt() {
        List<SessionResult> slow = IntStream.range(0, 40)
                .mapToObj(i -> InventedStudy.steady(60 + 20 * (i % 2), 50, 2000))
                .toList();
        List<SessionResult> quick = IntStream.range(0, 40)
                .mapToObj(i -> InventedStudy.steady(20 + 20 * (i % 2), 100, 2000))
                .toList();
        // Dialling 40 s less; 20 s less after that, of which a quarter are repeats: 40 of 60 s.
        SavedTime most = summary(List.of(), "hare", slow, "tortoise", quick)
                .verdict()
                .saved()
                .orElseThrow();
        assertEquals(Cause.DIALLING, most.cause().cause());
        assertEquals(40 / 60.0, most.partOfLead(), 1e-9);
        assertTrue(most.isMostOfLead());
        // Dialling 15 s less, new payload 15 s, repeats 5 s.
        List<SessionResult> even = IntStream.range(0, 40)
                .mapToObj(i -> InventedStudy.steady(45.5 + 20 * (i % 2), 100, 2000))
                .toList();
        SavedTime part = summary(List.of(), "hare", slow, "tortoise", even)
                .verdict()
                .saved()
                .orElseThrow();
        assertEquals(15 / 34.5, part.partOfLead(), 1e-9);
        assertFalse(part.isMostOfLead());
    }

    @Test
    void equalModesAreTooCloseToCall() {
        CaseSummary summary = summary(List.of(), "hare", many(20), "tortoise", many(20));
        assertEquals(Verdict.Standing.OPEN, summary.verdict().standing());
        assertEquals(List.of(0, 1), summary.leaders().modes());
    }

    @Test
    void whereNothingArrivesTheVerdictSaysWhatTheTimeWentInto() {
        Verdict verdict = summary(List.of(), "hare", failures().toList()).verdict();
        assertEquals(Verdict.Reason.NOTHING_ARRIVES, verdict.reason());
        assertEquals(Cause.REDIALLING, verdict.most().orElseThrow().cause());
    }

    @Test
    void modesAreComparedUnderTheSameSkies() {
        List<SessionResult> alternating = IntStream.range(0, 40)
                .mapToObj(i -> i % 4 == 0 ? InventedStudy.gaveUp(20) : InventedStudy.delivered(25))
                .toList();
        Comparison pair = summary(List.of(60.0), "hare", many(30), "tortoise", alternating)
                .comparisons()
                .get(0);
        assertEquals(new Proportion(10, 40), pair.firstBefore());
        assertEquals(new Proportion(30, 40), pair.secondBefore());
        assertEquals(-5, pair.medianLeadSeconds().value(), 1e-9);
        assertEquals(10, pair.deadlines().get(0).first());
    }

    private static List<SessionResult> many(double seconds) {
        return IntStream.range(0, 40)
                .mapToObj(i -> InventedStudy.delivered(seconds))
                .toList();
    }

    private static Stream<SessionResult> failures() {
        return IntStream.range(0, 40).mapToObj(i -> InventedStudy.gaveUp(600));
    }

    private static CaseSummary summary(List<Double> deadlines, String mode, List<SessionResult> sessions) {
        return CaseSummary.of(InventedStudy.oneCase(deadlines, List.of(mode), List.of(sessions)));
    }

    private static CaseSummary summary(
            List<Double> deadlines,
            String first,
            List<SessionResult> firstSessions,
            String second,
            List<SessionResult> secondSessions) {
        return CaseSummary.of(
                InventedStudy.oneCase(deadlines, List.of(first, second), List.of(firstSessions, secondSessions)));
    }

    private static CaseSummary summary(
            List<Double> deadlines,
            String first,
            List<SessionResult> firstSessions,
            String second,
            List<SessionResult> secondSessions,
            String third,
            List<SessionResult> thirdSessions) {
        return CaseSummary.of(InventedStudy.oneCase(
                deadlines, List.of(first, second, third), List.of(firstSessions, secondSessions, thirdSessions)));
    }
}
