package org.ionohaul.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.ionohaul.channel.End;
import org.ionohaul.link.ArqRules.AnswerToSilence;
import org.ionohaul.link.ArqScheme;
import org.ionohaul.link.Burst;
import org.ionohaul.link.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Answers of one word that are taken for the other: how often, what comes of each, and what the rules of the mode heal. */
final class MistakenRepliesTest {
    private static final int TRIALS = 4000;
    private static final double STANDARD_ERRORS = 4;
    private static final int BLOCK_BYTES = 3;

    private final List<String> overs = new ArrayList<>();
    private final List<String> told = new ArrayList<>();

    private Bench bench(ArqScheme scheme, int blocks) {
        Bench bench = new Bench();
        bench.scheme = scheme;
        bench.answerToSilence = scheme == ArqScheme.ALTERNATING ? AnswerToSilence.POLL : AnswerToSilence.REPEAT;
        bench.cycle = scheme == ArqScheme.ALTERNATING ? 450 * Bench.MILLI : 0;
        bench.silencesToLost = 32;
        bench.dataRates = List.of(PlainWaveform.certain(BLOCK_BYTES, 0, 210 * Bench.MILLI));
        bench.acknowledgement = PlainWaveform.certain(0, 0, 70 * Bench.MILLI);
        bench.cargo = Cargo.from(End.NEAR, List.of((long) BLOCK_BYTES * blocks));
        bench.trace = new Ears();
        return bench;
    }

    /** Loses those blocks, counted as they are sent from 1, and takes those replies for the other one. */
    private SessionResult run(ArqScheme scheme, int blocks, Set<Integer> lost, Set<Integer> mistaken) {
        Bench bench = bench(scheme, blocks);
        bench.dataRates =
                List.of(PlainWaveform.certain(BLOCK_BYTES, 0, 210 * Bench.MILLI).with(failing(lost)));
        bench.acknowledgement = new WrongFrames(
                PlainWaveform.certain(0, 0, 70 * Bench.MILLI).with(failing(mistaken)), right -> 1 - right);
        return bench.run(0);
    }

    private static PlainWaveform.Chance failing(Set<Integer> numbers) {
        int[] count = new int[1];
        return (listener, start) -> numbers.contains(++count[0]) ? 0 : 1;
    }

    private static void assertShare(double expected, long hits) {
        double standardError = Math.sqrt(expected * (1 - expected) / TRIALS);
        assertEquals(expected, (double) hits / TRIALS, STANDARD_ERRORS * standardError);
    }

    /**
     * Blocks are lost with chance L, answers with chance e, and taken for the other with chance w. A block gets by without that
     * with chance g: where a lost answer is asked for by itself, an answer that is understood at last is wrong with chance q = w /
     * (1 - e) and g = (1 - L)(1 - q) + L (1 - q) g; where the block is sent again instead, g = (1 - L) r + ((1 - L) e + L (r +
     * e)) g with r = 1 - e - w. Frames without numbers are all right if no request is taken for leave, and no block that is
     * repeated for nothing is printed: it may be lost on its way (h = L ((1 - q) + q h)), and beyond the size that was offered
     * nothing is kept.
     */
    @ParameterizedTest
    @CsvSource({"ALTERNATING, 0.0", "ALTERNATING, 0.3", "ASKED_REPEAT, 0.3"})
    void asManySessionsMeetAWrongReplyAsTheClosedFormSays(ArqScheme scheme, double loss) {
        int blocks = 12;
        double lost = 0.2;
        double wrong = 0.01;
        Bench bench = bench(scheme, blocks);
        bench.dataRates = List.of(PlainWaveform.losing(BLOCK_BYTES, 0, 210 * Bench.MILLI, loss));
        bench.acknowledgement =
                new WrongFrames(PlainWaveform.losing(0, 0, 70 * Bench.MILLI, lost + wrong), right -> wrong);
        int met = 0;
        int spoiled = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            told.clear();
            SessionResult result = bench.run(trial);
            met += told.stream().anyMatch(it -> it.contains("taken")) ? 1 : 0;
            spoiled += result.outcome() == Outcome.DELIVERED_WRONG ? 1 : 0;
        }
        if (scheme == ArqScheme.ALTERNATING) {
            double right = 1 - wrong / (1 - lost);
            double held = (1 - loss) / (1 - loss * right);
            assertShare(1 - Math.pow(held * right, blocks), met);
            double healed = loss * right / (1 - loss * (1 - right));
            assertShare(1 - Math.pow(held * (right + (1 - right) * healed), blocks - 1) * held, spoiled);
        } else {
            double right = 1 - lost - wrong;
            assertShare(1 - Math.pow((1 - loss) * right / (1 - lost - loss * right), blocks), met);
        }
    }

    /** Block 1 is there, and asked for once more: it comes twice more until the signals are in step again. */
    @Test
    void leaveToGoOnTakenForARequestHasABlockPrintedTwiceMore() {
        SessionResult result = run(ArqScheme.ALTERNATING, 5, Set.of(), Set.of(2));
        assertEquals(List.of("0", "3", "3", "3", "6", "9", "12"), overs);
        assertEquals(List.of("NEAR taken for a request", "FAR wrong from 6", "FAR wrong from 6"), told);
        assertEquals(Outcome.DELIVERED_WRONG, result.outcome());
        assertEquals(6, result.progress().heldBytes(result.progress().size() - 1));
    }

    /** Block 2 is lost; block 3 is printed in its place, and again as itself. */
    @Test
    void aRequestTakenForLeaveToGoOnLosesABlockAndPrintsTheNextTwice() {
        SessionResult result = run(ArqScheme.ALTERNATING, 5, Set.of(2), Set.of(2));
        assertEquals(List.of("0", "3 lost", "6", "6", "9", "12"), overs);
        assertEquals(List.of("NEAR taken for leave", "FAR wrong from 3", "FAR wrong from 9"), told);
        assertEquals(Outcome.DELIVERED_WRONG, result.outcome());
        assertEquals(3, result.progress().heldBytes(result.progress().size() - 1));
    }

    /** Beyond the size that was offered nothing is kept. */
    @Test
    void theLastBlockPrintedTwiceMoreSpoilsNothing() {
        SessionResult result = run(ArqScheme.ALTERNATING, 2, Set.of(), Set.of(2));
        assertEquals(List.of("0", "3", "3", "3"), overs);
        assertEquals(List.of("NEAR taken for a request"), told);
        assertEquals(Outcome.CLOSED, result.outcome());
    }

    @ParameterizedTest
    @CsvSource({"ALTERNATING", "ASKED_REPEAT"})
    void theLastBlockLostIsAFileWhoseEndIsMissing(ArqScheme scheme) {
        SessionResult result = run(scheme, 2, Set.of(2), Set.of(2));
        assertEquals(List.of("0", "3 lost"), overs);
        assertEquals(List.of("NEAR taken for leave", "file 0 cut short"), told);
        assertEquals(Outcome.DELIVERED_WRONG, result.outcome());
        assertTrue(result.deliveredNanos().isEmpty() && result.confirmedNanos().isPresent());
        assertEquals(1, result.wrongFrames());
    }

    @Test
    void textThatMayBeWrongMayEndTooEarly() {
        Bench bench = bench(ArqScheme.ALTERNATING, 2);
        bench.cargo = bench.cargo.acceptingErrors(true);
        bench.dataRates =
                List.of(PlainWaveform.certain(BLOCK_BYTES, 0, 210 * Bench.MILLI).with(failing(Set.of(2))));
        bench.acknowledgement = new WrongFrames(
                PlainWaveform.certain(0, 0, 70 * Bench.MILLI).with(failing(Set.of(2))), right -> 1 - right);
        SessionResult result = bench.run(0);
        assertEquals(Outcome.CLOSED, result.outcome());
        assertEquals(6, result.progress().heldBytes(result.progress().size() - 1));
    }

    /** A lost signal is asked for by a burst of its own, which nobody prints. */
    @Test
    void aLostControlSignalSpoilsNothing() {
        Bench bench = bench(ArqScheme.ALTERNATING, 4);
        bench.acknowledgement = PlainWaveform.certain(0, 0, 70 * Bench.MILLI).with(failing(Set.of(1, 2, 4)));
        SessionResult result = bench.run(0);
        assertEquals(List.of("0", "3", "6", "9"), overs);
        assertEquals(Outcome.CLOSED, result.outcome());
        assertEquals(0, result.wrongFrames());
    }

    /** With numbers a block that comes again is known, and costs its time. */
    @Test
    void aNumberedBlockAskedForInVainIsDropped() {
        SessionResult result = run(ArqScheme.ASKED_REPEAT, 3, Set.of(), Set.of(2));
        assertEquals(List.of("0", "3", "3", "6"), overs);
        assertEquals(List.of("NEAR taken for a request"), told);
        assertEquals(Outcome.CLOSED, result.outcome());
    }

    /** With numbers a block that follows a missing one is refused until the link is given up; the next goes on where it is. */
    @Test
    void aNumberedBlockAfterAMissingOneIsRefusedUntilTheLinkIsLost() {
        SessionResult result = run(ArqScheme.ASKED_REPEAT, 4, Set.of(2), Set.of(2));
        assertEquals("0, 3 lost" + ", 6".repeat(32) + ", 3, 6, 9", String.join(", ", overs));
        assertEquals(List.of("NEAR taken for leave"), told);
        assertEquals(1, result.linksLost());
        assertEquals(Outcome.CLOSED, result.outcome());
        assertEquals(0, result.wrongFrames());
    }

    /** Where a reply tells what is held, one that is wrong is taken as right: its check is good. */
    @ParameterizedTest
    @CsvSource({"STOP_AND_WAIT", "SELECTIVE_REPEAT"})
    void aReplyThatTellsWhatIsHeldIsTakenAsRight(ArqScheme scheme) {
        SessionResult result = run(scheme, 4, Set.of(), Set.of(1));
        assertEquals(List.of(), told);
        assertEquals(Outcome.CLOSED, result.outcome());
    }

    private final class Ears implements SessionTrace {
        @Override
        public void onArrived(End at, Burst burst, boolean isHeard, long atNanos) {
            if (burst.message() == Message.OVER) {
                overs.add(burst.frameStart(0) + (burst.isDecoded(0) ? "" : " lost"));
            }
        }

        @Override
        public void onWrongReply(End at, boolean asRepeat, long atNanos) {
            told.add(at + " taken for " + (asRepeat ? "a request" : "leave"));
        }

        @Override
        public void onWrongFrame(End at, long fromByte, long atNanos) {
            told.add(at + " wrong from " + fromByte);
        }

        @Override
        public void onCutShort(int file, long atNanos) {
            told.add("file " + file + " cut short");
        }
    }
}
