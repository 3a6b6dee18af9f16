package org.ionohaul.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.Ending;
import org.ionohaul.session.SessionResult;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.InventedStudy;
import org.ionohaul.study.SizeGrid;
import org.ionohaul.study.SizeTransfers;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.StudyRunner;
import org.junit.jupiter.api.Test;

/** Answers for every file size, from long transfers whose completion times are known in closed form. */
final class SizeAnswersTest {
    private static final int TRIALS = 400;
    private static final Transfer ONE_WAY =
            new Transfer("file", List.of(new PayloadFile("file", 1000)), List.of(Direction.UPLOAD), List.of());
    private static final SessionResult NOTHING = InventedStudy.steady(3600, 100, 1000);

    private final UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(2L);

    /** Time for s bytes: entry + s / rate. */
    @Test
    void aSteadyModeHasAStraightCurve() {
        SizeCurve curve = answers(100_000, List.of("hare"), List.of(same(InventedStudy.steady(20, 50, 100_000))))
                .curves()
                .get(0);
        assertEquals(SizeGrid.countUpTo(100_000), curve.points().size());
        for (SizePoint point : curve.points()) {
            double expected = 20 + Math.ceil(point.bytes() / 100.0) * 100 / 50;
            // What is not sent may be late by an over, which is a second long.
            double late = point.bytes() < 100_000 ? 1 : 0;
            assertEquals(expected, point.medianSeconds().value(), 1e-3);
            assertEquals(expected - late, point.medianSeconds().low(), 1e-3);
            assertEquals(expected, point.medianSeconds().high(), 1e-3);
            assertEquals(1, point.reached().value());
        }
        Pace pace = curve.pace();
        assertEquals(22, pace.firstByteSeconds().value());
        assertEquals(40, pace.firstKilobyteSeconds().value());
        assertEquals(60 * 50, pace.earlyBytesPerMinute().value(), 1e-9);
        assertEquals(60 * 50, pace.sustainedBytesPerMinute().value(), 1e-9);
        // 2,000 s after the entry, a quarter of them repeats.
        assertEquals(500 / 2020.0, pace.troubleShare(), 1e-9);
        assertEquals(
                60 * (100_000 / 1520.0 - 100_000 / 2020.0),
                pace.lostBytesPerMinute().value(),
                1e-9);
    }

    @Test
    void sizesNotReachedInTheTimeWatchedStayOpen() {
        SizeCurve curve = answers(1_000_000, List.of("hare"), List.of(same(InventedStudy.steady(0, 100, 1_000_000))))
                .curves()
                .get(0);
        SizePoint within = curve.points().get(SizeGrid.indexNotBelow(355_000));
        SizePoint beyond = curve.points().get(SizeGrid.indexNotBelow(400_000));
        assertEquals(3550, within.medianSeconds().value());
        assertEquals(Double.POSITIVE_INFINITY, beyond.medianSeconds().value());
        assertEquals(0, beyond.reached().value());
        assertEquals(6000, curve.pace().sustainedBytesPerMinute().value(), 1e-9);
    }

    /**
     * Quick entry at 50 B/s against late entry at 200 B/s: 10 + s/50 = 130 + s/200 at s = 8 kB. Both entries vary by the
     * same up to 20 s, so that at 8 kB each comes first in half of the trials.
     */
    @Test
    void modesCrossWhereTheirCurvesMeet() {
        SizeAnswers answers = answers(
                100_000,
                List.of("hare", "tortoise"),
                List.of(
                        repeat(() -> InventedStudy.steady(20 * random.nextDouble(), 50, 100_000)),
                        repeat(() -> InventedStudy.steady(120 + 20 * random.nextDouble(), 200, 100_000))));
        Crossing crossing = answers.pairs().get(0).crossings().get(0);
        assertEquals("hare", crossing.firstBelow());
        assertEquals("tortoise", crossing.firstAbove());
        assertTrue(crossing.bytes().low() < 8000 && 8000 < crossing.bytes().high(), crossing.toString());
        // A step of the grid is an eighth.
        assertEquals(8000, crossing.bytes().value(), 1000);
        assertTrue(crossing.bytes().high() / crossing.bytes().low() < 1.5, crossing.toString());
    }

    @Test
    void modesThatNeverChangePlacesDoNotCross() {
        SizeComparison pair = answers(
                        10_000,
                        List.of("hare", "tortoise"),
                        List.of(
                                same(InventedStudy.steady(10, 100, 10_000)),
                                same(InventedStudy.steady(20, 50, 10_000))))
                .pairs()
                .get(0);
        assertEquals(List.of(), pair.crossings());
        assertEquals(List.of(new ProvenLead("hare", 1000, 10_000)), pair.proven());
        assertTrue(pair.leads().stream().allMatch(it -> it.atLeast().firsts().first() == TRIALS));
    }

    @Test
    void everyPairIsCompared() {
        List<SessionResult> same = same(InventedStudy.steady(10, 100, 2000));
        SizeAnswers answers = answers(2000, List.of("a", "b", "c"), List.of(same, same, same));
        assertEquals(
                List.of("a b", "a c", "b c"),
                answers.pairs().stream()
                        .map(it -> it.first() + " " + it.second())
                        .toList());
    }

    /** With a rate r uniform from 50 to 150 B/s, s bytes are through by D in a share (150 - s/D) / 100 of trials. */
    @Test
    void theLargestFileThatMayBePromisedIsThatOfTheClosedForm() {
        PromiseTable table = promises();
        Promise promise = table.largestFile(600, 0.9);
        double truth = 600 * (150 - 100 * 0.9);
        assertTrue(promise.bytes().low() <= truth && truth <= promise.bytes().high() * 1.13, promise.toString());
        // Rounded down to the grid, and the rate's 10 % quantile from 400 trials has a standard error of 2.5 %.
        assertEquals(truth, promise.bytes().value(), 0.25 * truth);
        assertEquals(Direction.UPLOAD, table.direction());
    }

    @Test
    void promisesAreMonotone() {
        PromiseTable table = promises();
        double[] deadlines = {5, 60, 300, 600, 1200, 3600};
        double[] confidences = {0.5, 0.8, 0.9, 0.95, 0.99};
        int checked = 0;
        for (int i = 1; i < deadlines.length; i++) {
            for (int j = 1; j < confidences.length; j++) {
                Promise promise = table.largestFile(deadlines[i], confidences[j]);
                Promise sooner = table.largestFile(deadlines[i - 1], confidences[j]);
                Promise lessSure = table.largestFile(deadlines[i], confidences[j - 1]);
                assertTrue(sooner.bytes().value() <= promise.bytes().value());
                assertTrue(promise.bytes().value() <= lessSure.bytes().value());
                assertTrue(sooner.safeBytes() <= promise.safeBytes());
                assertTrue(promise.safeBytes() <= lessSure.safeBytes());
                checked++;
            }
        }
        assertEquals(20, checked);
    }

    @Test
    void nothingIsPromisedWhereNothingArrives() {
        assertEquals(new Estimate(0, 0, 0), promises().largestFile(5, 0.9).bytes());
    }

    /** All late trials were still sending: the time decides. On too few trials nothing is safe. */
    @Test
    void aPromiseSaysWhatLimitsItAndHowManyTrialsItNeeds() {
        Promise promise = promises().largestFile(600, 0.9);
        assertEquals(Optional.of(Limit.DEADLINE), promise.limits().largest());
        assertEquals(29, promise.fewestTrials());
        assertTrue(promise.areTrialsEnough() && promise.safeBytes() > 0, promise.toString());
        Promise tooSure = promises().largestFile(600, 0.995);
        assertEquals(598, tooSure.fewestTrials());
        assertEquals(0, tooSure.safeBytes());
        assertEquals(false, tooSure.areTrialsEnough());
    }

    /** Of 30 trials 16 never get a link, 14 get through late. */
    @Test
    void whatKeepsMostOfTheLateTrialsIsTheLimit() {
        List<SessionResult> sessions =
                new ArrayList<>(Collections.nCopies(16, InventedStudy.neverLinked(Ending.NEVER_LINKED, 100)));
        sessions.addAll(Collections.nCopies(14, InventedStudy.steady(300, 50, 2000)));
        PromiseTable table = PromiseTable.of(
                        InventedStudy.oneFileStudy(2000, List.of("hare"), List.of(sessions)), Direction.UPLOAD)
                .get(0);
        assertEquals(
                Optional.of(Limit.NO_LINK), table.largestFile(200, 0.5).limits().largest());
        assertEquals(
                Optional.of(Limit.DEADLINE), table.largestFile(90, 0.5).limits().largest());
    }

    /**
     * Hare: 10 + s/50, tortoise: 130 + s/200, but in overs of 3000 bytes, so that a longer file has its first 8 kB up to 15 s
     * late; both entries vary by 20 s, so that they cross at 8 kB. Whole studies are repeated: the range holds the truth in
     * 95 of 100, less 4 standard errors.
     */
    @Test
    void theRangeOfACrossingHoldsTheTruthAsOftenAsItSays() {
        int studies = 100;
        int covered = 0;
        for (int study = 0; study < studies; study++) {
            Scenario upload = InventedStudy.scenario(60, ONE_WAY, "hare", "tortoise");
            Scenario scenario = SizeTransfers.in(upload, 31_500, 3600);
            StudyResult result = new StudyRunner(
                            scenario,
                            trial -> scenario.transfers().stream()
                                    .map(Transfer::totalBytes)
                                    .flatMap(bytes -> Stream.of(
                                            InventedStudy.steady(20 * random.nextDouble(), 50, bytes),
                                            InventedStudy.inOvers(120 + 20 * random.nextDouble(), 200, bytes, 3000)))
                                    .toList(),
                            1,
                            (done, asked) -> {},
                            () -> false)
                    .run();
            Estimate bytes = SizeAnswers.of(result, Direction.UPLOAD)
                    .pairs()
                    .get(0)
                    .crossings()
                    .get(0)
                    .bytes();
            covered += bytes.low() <= 8000 && 8000 <= bytes.high() ? 1 : 0;
        }
        assertTrue(covered >= studies * (0.95 - 4 * Math.sqrt(0.95 * 0.05 / studies)), covered + " of " + studies);
    }

    /** Sends what the answers ask for until they ask for nothing more, as {@code study} does. */
    private static SizeComparison lookedAtClosely(
            Scenario first, LongFunction<List<SessionResult>> sessionsByBytes, List<Scenario> sent) {
        StudyResult all = sizes(first, sessionsByBytes);
        Optional<Scenario> more = SizeAnswers.toBeSent(all);
        while (more.isPresent()) {
            sent.add(more.get());
            all = all.with(sizes(more.get(), sessionsByBytes));
            more = SizeAnswers.toBeSent(all);
        }
        return SizeAnswers.of(all, Direction.UPLOAD).pairs().get(0);
    }

    private static StudyResult sizes(Scenario scenario, LongFunction<List<SessionResult>> sessionsByBytes) {
        return new StudyRunner(
                        scenario,
                        trial -> scenario.transfers().stream()
                                .flatMap(it -> sessionsByBytes.apply(it.totalBytes()).stream())
                                .toList(),
                        1,
                        (done, asked) -> {},
                        () -> false)
                .run();
    }

    /**
     * Hare: 10 + s/200, tortoise: 210 + s/400, in overs of 3000 bytes or 7.5 s, so that they cross at 80 kB; a long file's
     * first 80 kB are up to 7.5 s late, which shifts where they seem to cross by up to 3 kB, more than chance does. Whole
     * studies are repeated: the range holds the truth in 95 of 100, less 4 standard errors, and so do the sizes at which a
     * mode is said to be ahead.
     */
    @Test
    void largerSizesAreSentAboutACrossingSoThatItsRangeHoldsTheTruth() {
        int studies = 60;
        int covered = 0;
        int right = 0;
        for (int study = 0; study < studies; study++) {
            List<Scenario> sent = new ArrayList<>();
            SizeComparison pair = lookedAtClosely(
                    SizeTransfers.in(InventedStudy.scenario(60, ONE_WAY, "hare", "tortoise"), 200_000, 3600),
                    bytes -> List.of(
                            InventedStudy.inOvers(20 * random.nextDouble(), 200, bytes, 3000),
                            InventedStudy.inOvers(200 + 20 * random.nextDouble(), 400, bytes, 3000)),
                    sent);
            assertTrue(sent.get(0).transfers().stream().anyMatch(it -> it.totalBytes() == 80_000), sent::toString);
            Estimate bytes = pair.crossings().get(0).bytes();
            covered += bytes.low() <= 80_000 && 80_000 <= bytes.high() ? 1 : 0;
            right += pair.proven().size() == 2
                            && pair.proven().get(0).mode().equals("hare")
                            && pair.proven().get(0).toBytes() < 80_000
                            && pair.proven().get(1).fromBytes() > 80_000
                    ? 1
                    : 0;
        }
        double least = studies * (0.95 - 4 * Math.sqrt(0.95 * 0.05 / studies));
        assertTrue(covered >= least, covered + " of " + studies);
        assertTrue(right >= least, right + " of " + studies);
    }

    /**
     * Hare: 10 + s/50. Tortoise: 130 + s/200 up to 16 kB, and from there 1 s for 25 bytes: it gets ahead at 8 kB and falls
     * behind again where 120 s are used up at 1/50 s a byte, at 22 kB.
     */
    @Test
    void aPairThatChangesPlacesTwiceIsToldSo() {
        int studies = 60;
        int covered = 0;
        for (int study = 0; study < studies; study++) {
            SizeComparison pair = lookedAtClosely(
                    SizeTransfers.in(InventedStudy.scenario(60, ONE_WAY, "hare", "tortoise"), 40_000, 3600),
                    bytes -> List.of(
                            InventedStudy.inOvers(20 * random.nextDouble(), 50, bytes, 1000),
                            InventedStudy.inOvers(
                                    120 + 20 * random.nextDouble() + 0.035 * Math.max(0, bytes - 16_000),
                                    200,
                                    bytes,
                                    1000)),
                    new ArrayList<>());
            covered += pair.crossings().size() == 2
                            && pair.crossings().get(0).firstBelow().equals("hare")
                            && holds(pair.crossings().get(0).bytes(), 8000)
                            && pair.crossings().get(1).firstBelow().equals("tortoise")
                            && holds(pair.crossings().get(1).bytes(), 22_000)
                    ? 1
                    : 0;
        }
        // Two ranges that err in 5 of 100 each, and 4 standard errors.
        assertTrue(covered >= studies * (0.9 - 4 * Math.sqrt(0.9 * 0.1 / studies)), covered + " of " + studies);
    }

    private static boolean holds(Estimate estimate, double truth) {
        return estimate.low() <= truth && truth <= estimate.high();
    }

    /** Modes that differ at no size need no further sessions. */
    @Test
    void nothingMoreIsSentWhereNothingCrosses() {
        StudyResult alike = sizes(
                SizeTransfers.in(InventedStudy.scenario(60, ONE_WAY, "a", "b"), 200_000, 3600),
                bytes -> List.of(
                        InventedStudy.inOvers(10, 200, bytes, 3000), InventedStudy.inOvers(10, 200, bytes, 3000)));
        assertEquals(Optional.empty(), SizeAnswers.toBeSent(alike));
    }

    /** Were each size tested at 5 %, most pairs of equal modes would cross somewhere. */
    @Test
    void modesThatAreAlikeSeldomCross() {
        int studies = 100;
        int crossed = 0;
        for (int study = 0; study < studies; study++) {
            Scenario scenario = SizeTransfers.in(InventedStudy.scenario(60, ONE_WAY, "a", "b"), 31_500, 3600);
            StudyResult result = new StudyRunner(
                            scenario,
                            trial -> scenario.transfers().stream()
                                    .map(Transfer::totalBytes)
                                    .flatMap(bytes -> Stream.generate(() ->
                                                    InventedStudy.inOvers(20 * random.nextDouble(), 50, bytes, 3000))
                                            .limit(2))
                                    .toList(),
                            1,
                            (done, asked) -> {},
                            () -> false)
                    .run();
            crossed += SizeAnswers.of(result, Direction.UPLOAD)
                            .pairs()
                            .get(0)
                            .crossings()
                            .isEmpty()
                    ? 0
                    : 1;
        }
        // 5 of 100 and 4 standard errors.
        assertTrue(crossed <= 5 + 4 * Math.sqrt(100 * 0.05 * 0.95), crossed + " of " + studies);
    }

    /**
     * Upload: the short file takes 20 s; the first bytes of the long one come at 40 s, its last at 50 s. Download: by
     * chance the larger sizes take 11 to 15 s, so that the 20 s of the smallest become the median of the largest.
     */
    @Test
    void sizesAreReadOffTheNextLargerTransferAndNeverFall() {
        Scenario scenario = InventedStudy.scenario(2, InventedStudy.LETTER, "hare")
                .sending(List.of(bothWays(1000), bothWays(2000)), 3600);
        List<SessionResult> sessions = List.of(
                InventedStudy.steady(10, 100, 1000),
                InventedStudy.steady(10, 100, 1000),
                InventedStudy.steady(30, 100, 2000),
                InventedStudy.steady(5, 200, 2000));
        StudyResult result = new StudyRunner(scenario, trial -> sessions, 1, (done, asked) -> {}, () -> false).run();
        List<SizePoint> up =
                SizeAnswers.of(result, Direction.UPLOAD).curves().get(0).points();
        assertEquals(20, up.get(0).medianSeconds().value());
        assertEquals(42, up.get(1).medianSeconds().value());
        assertEquals(50, up.get(6).medianSeconds().value());
        List<SizePoint> down =
                SizeAnswers.of(result, Direction.DOWNLOAD).curves().get(0).points();
        assertEquals(5 + 6.0, down.get(0).medianSeconds().value());
        assertEquals(20, down.get(6).medianSeconds().value());
    }

    /** A trial that gives up on 1 kB by chance and carries 2 kB through an hour later lost just the one file. */
    @Test
    void aFileLostByChanceSpoilsNoLargerOneOfThatTrial() {
        StudyResult result = shortAndLong(
                trial -> trial % 10 == 0 ? NOTHING : InventedStudy.steady(10, 100, 1000),
                trial -> InventedStudy.steady(10, 100, 2000));
        List<SizePoint> points =
                SizeAnswers.of(result, Direction.UPLOAD).curves().get(0).points();
        // The one share of 0.9 goes to the largest size, as a share that falls with size must.
        assertEquals(1, points.get(0).reached().value());
        assertEquals(0.9, points.get(points.size() - 1).reached().value());
        assertEquals(30, points.get(points.size() - 1).ninthSeconds().value());
        SizeTimes times = SizeTimes.of(result, Direction.UPLOAD).get(0);
        assertEquals(Double.POSITIVE_INFINITY, times.seconds(0)[0]);
        assertEquals(30, times.seconds(points.size() - 1)[0]);
    }

    /** Entry 10 s, 100 B/s from there: the pace between two sizes is that of one session, even if the other is late. */
    @Test
    void theEarlyPaceIsThatOfOneSession() {
        StudyResult result = shortAndLong(
                trial -> InventedStudy.steady(500, 100, 1000), trial -> InventedStudy.steady(10, 100, 2000));
        Pace pace = SizeAnswers.of(result, Direction.UPLOAD).curves().get(0).pace();
        assertEquals(6000, pace.earlyBytesPerMinute().value(), 1e-9);
        assertEquals(510, pace.firstKilobyteSeconds().value());
    }

    /**
     * Each of 32 really sent sizes fails in 4 % of trials, by chance of its own; the time for s bytes, if it comes, is
     * 10 + s/100, so that is every quantile to 96 %. A running maximum a trial would lose 1 - 0.96^32 = 73 % of the largest files.
     */
    @Test
    void chanceOfSmallFilesDoesNotAddUpInLargeOnes() {
        Scenario scenario = SizeTransfers.in(InventedStudy.scenario(2000, InventedStudy.LETTER, "hare"), 50_000, 3600);
        StudyResult result = new StudyRunner(
                        scenario,
                        trial -> scenario.transfers().stream()
                                .flatMap(transfer ->
                                        transfer.directions().stream().map(way -> transfer.totalBytes()))
                                .map(bytes ->
                                        random.nextDouble() < 0.04 ? NOTHING : InventedStudy.steady(10, 100, bytes))
                                .toList(),
                        1,
                        (done, asked) -> {},
                        () -> false)
                .run();
        SizeCurve curve = SizeAnswers.of(result, Direction.UPLOAD).curves().get(0);
        for (SizePoint point : curve.points()) {
            // In whole overs of 100 bytes where it is read off the longest.
            assertEquals(10 + point.bytes() / 100.0, point.ninthSeconds().value(), point.bytes() > 31_500 ? 1 : 1e-3);
            // Between 4 standard errors of 0.96 from 2,000 trials.
            assertEquals(0.96, point.reached().value(), 4 * Math.sqrt(0.96 * 0.04 / 2000));
        }
    }

    private static Transfer bothWays(long bytes) {
        return new Transfer(
                bytes + " B", List.of(new PayloadFile("file", bytes)), List.of(Direction.values()), List.of());
    }

    private static StudyResult shortAndLong(LongFunction<SessionResult> ofShort, LongFunction<SessionResult> ofLong) {
        Scenario scenario = InventedStudy.scenario(100, InventedStudy.LETTER, "hare")
                .sending(List.of(bothWays(1000), bothWays(2000)), 3600);
        return new StudyRunner(
                        scenario,
                        trial -> List.of(
                                ofShort.apply(trial), ofShort.apply(trial), ofLong.apply(trial), ofLong.apply(trial)),
                        1,
                        (done, asked) -> {},
                        () -> false)
                .run();
    }

    @Test
    void smallFilesAreReallySentAndEverythingElseIsKept() {
        Scenario scenario = InventedStudy.scenario(7, InventedStudy.LETTER, "hare");
        Scenario longer = SizeTransfers.in(scenario, 500_000, 1800);
        List<Long> sizes = new ArrayList<>(SizeGrid.BYTES.subList(0, 31));
        assertEquals(31_500, sizes.get(30));
        sizes.add(500_000L);
        assertEquals(
                sizes, longer.transfers().stream().map(Transfer::totalBytes).toList());
        assertEquals(List.of(Direction.values()), longer.transfers().get(0).directions());
        assertEquals(1800, longer.horizonSeconds());
        assertEquals(scenario.modes(), longer.modes());
        assertEquals(scenario.seed(), longer.seed());
    }

    private PromiseTable promises() {
        return PromiseTable.of(
                        InventedStudy.oneFileStudy(
                                100_000,
                                List.of("hare"),
                                List.of(repeat(
                                        () -> InventedStudy.steady(0, 50 + 100 * random.nextDouble(), 100_000)))),
                        Direction.UPLOAD)
                .get(0);
    }

    private static SizeAnswers answers(long bytes, List<String> modes, List<List<SessionResult>> sessions) {
        return SizeAnswers.of(InventedStudy.oneFileStudy(bytes, modes, sessions), Direction.UPLOAD);
    }

    private static List<SessionResult> same(SessionResult session) {
        return Collections.nCopies(TRIALS, session);
    }

    private static List<SessionResult> repeat(Supplier<SessionResult> session) {
        return Stream.generate(session).limit(TRIALS).toList();
    }
}
