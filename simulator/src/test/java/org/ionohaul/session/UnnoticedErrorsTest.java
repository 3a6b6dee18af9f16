package org.ionohaul.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import org.ionohaul.channel.End;
import org.ionohaul.waveform.Combining;
import org.junit.jupiter.api.Test;

/** Frames that a check takes for right though they are wrong, from the receiver to the outcome of the session. */
final class UnnoticedErrorsTest {
    private static final int TRIALS = 4000;
    private static final double STANDARD_ERRORS = 4;
    private static final double LOSS = 0.4;
    private static final double PASSED_SHARE = 0.02;

    /** Of the frames that pass the check, those that are wrong: frames are repeated until they pass. */
    private static final double WRONG = LOSS * PASSED_SHARE / (1 - LOSS + LOSS * PASSED_SHARE);

    private static Bench bench(int frames) {
        Bench bench = new Bench();
        bench.dataRates = List.of(WrongFrames.passing(
                PlainWaveform.losing(100, 200 * Bench.MILLI, 100 * Bench.MILLI, LOSS), PASSED_SHARE));
        bench.cargo = Cargo.from(End.NEAR, List.of(100L * frames));
        return bench;
    }

    private static List<SessionResult> results(Bench bench, int trials) {
        return LongStream.range(0, trials).mapToObj(bench::run).toList();
    }

    private static void assertShare(double expected, long hits, long trials) {
        double standardError = Math.sqrt(expected * (1 - expected) / trials);
        assertEquals(expected, (double) hits / trials, STANDARD_ERRORS * standardError);
    }

    /** A file of n frames is right with probability (1 - q)^n, and so is each shorter one that it begins with. */
    @Test
    void aFileIsRightIfNoFrameOfItIsWrong() {
        List<SessionResult> results = results(bench(30), TRIALS);
        assertShare(
                Math.pow(1 - WRONG, 30),
                results.stream().filter(it -> it.deliveredNanos().isPresent()).count(),
                TRIALS);
        for (int frames : List.of(1, 10, 20)) {
            assertShare(
                    Math.pow(1 - WRONG, frames),
                    results.stream()
                            .filter(it -> it.progress().reachedNanos(100L * frames) < ProgressCurve.NEVER)
                            .count(),
                    TRIALS);
        }
    }

    @Test
    void aWrongFileIsAnOutcomeOfItsOwnAndNoStationKnows() {
        List<SessionResult> results = results(bench(30), 200);
        List<SessionResult> wrong = results.stream()
                .filter(it -> it.outcome() == Outcome.DELIVERED_WRONG)
                .toList();
        assertTrue(wrong.size() > 20, wrong.size() + " wrong");
        for (SessionResult it : results) {
            assertEquals(it.wrongFrames() > 0, it.outcome() == Outcome.DELIVERED_WRONG);
            assertEquals(it.wrongFrames() > 0, it.deliveredNanos().isEmpty());
            assertEquals(Ending.COMPLETED, it.ending());
            assertTrue(it.confirmedNanos().isPresent() && it.closedNanos().isPresent());
        }
    }

    @Test
    void whoAcceptsErrorsHasAllDeliveredAtTheSameInstants() {
        Bench strict = bench(30);
        Bench lenient = bench(30);
        lenient.cargo = lenient.cargo.acceptingErrors(true);
        for (int trial = 0; trial < 200; trial++) {
            SessionResult accepted = lenient.run(trial);
            SessionResult refused = strict.run(trial);
            assertEquals(Outcome.CLOSED, accepted.outcome());
            assertEquals(accepted.confirmedNanos(), refused.confirmedNanos());
            assertEquals(accepted.wrongFrames(), refused.wrongFrames());
            assertEquals(3000, accepted.progress().heldBytes(accepted.progress().size() - 1));
        }
    }

    /**
     * Each try to decode what was combined has its own chance to pass wrongly: with chances of 0.3, 0.6, 0.9 and 1 for one
     * to four copies the failures are 0.7 + 0.4 + 0.1 a frame (less what had passed before, a share of squares).
     */
    @Test
    void eachCopyCombinedMayPassWrongly() {
        double passedShare = 0.005;
        int frames = 200;
        int trials = 400;
        Bench bench = bench(frames);
        bench.combining = Combining.CHASE;
        bench.store = 1000;
        bench.dataRates = List.of(
                WrongFrames.passing(PlainWaveform.losing(100, 200 * Bench.MILLI, 100 * Bench.MILLI, 0.7), passedShare));
        long wrong = results(bench, trials).stream()
                .mapToLong(SessionResult::wrongFrames)
                .sum();
        assertShare(1.2 * passedShare, wrong, (long) frames * trials);
    }

    /** Every other frame is wrong until the link breaks at 4 s, with 8 or 16 of 20 there; all are right after it. */
    private static SessionResult brokenAfterWrong(boolean resumes) {
        long breaksNanos = 4 * Bench.SECOND;
        long mendedNanos = 60 * Bench.SECOND;
        PlainWaveform.Chance link = (listener, start) -> start > breaksNanos && start < mendedNanos ? 0 : 1;
        Bench bench = new Bench();
        bench.dataRates = List.of(new WrongFrames(
                PlainWaveform.certain(100, 200 * Bench.MILLI, 100 * Bench.MILLI)
                        .with((listener, start) -> start <= breaksNanos ? 0.5 : link.of(listener, start)),
                right -> right == 0.5 ? 0.5 : 0));
        bench.acknowledgement =
                PlainWaveform.certain(0, 50 * Bench.MILLI, 50 * Bench.MILLI).with(link);
        bench.call =
                PlainWaveform.certain(0, 500 * Bench.MILLI, 500 * Bench.MILLI).with(link);
        bench.control =
                PlainWaveform.certain(0, 100 * Bench.MILLI, 100 * Bench.MILLI).with(link);
        bench.cargo = Cargo.from(End.NEAR, List.of(2000L));
        bench.rules = new SessionRules(3, Bench.SECOND, 1, 3, resumes, 9, true, 10 * Bench.SECOND);
        return bench.run(0);
    }

    @Test
    void wrongBytesStayWithATransferThatResumesAndGoWithOneThatBeginsAnew() {
        SessionResult resumed = brokenAfterWrong(true);
        assertEquals(1, resumed.linksLost());
        assertTrue(resumed.wrongFrames() > 0);
        assertEquals(Outcome.DELIVERED_WRONG, resumed.outcome());
        SessionResult begunAnew = brokenAfterWrong(false);
        assertEquals(1, begunAnew.linksLost());
        assertTrue(begunAnew.wrongFrames() > 0);
        assertEquals(Outcome.CLOSED, begunAnew.outcome());
        assertEquals(2000, begunAnew.progress().heldBytes(begunAnew.progress().size() - 1));
    }

    /** The first of two files is wrong, the second right: what was brought over ends where the first goes wrong. */
    @Test
    void oneWrongFileSpoilsTheTransferAndIsToldByItself() {
        Bench bench = bench(30);
        bench.cargo = Cargo.from(End.FAR, List.of(3000L, 100L));
        SessionResult result = LongStream.range(0, 50)
                .mapToObj(bench::run)
                .filter(it -> it.filesDeliveredNanos().get(0).isEmpty()
                        && it.filesDeliveredNanos().get(1).isPresent())
                .findFirst()
                .orElseThrow();
        assertEquals(Outcome.DELIVERED_WRONG, result.outcome());
        assertEquals(OptionalLong.empty(), result.deliveredNanos());
        assertTrue(result.progress().heldBytes(result.progress().size() - 1) < 3000);
    }
}
