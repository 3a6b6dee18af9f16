package org.ionohaul.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalLong;
import org.ionohaul.channel.End;
import org.junit.jupiter.api.Test;

/** Every way a session can end. */
final class OutcomeTest {
    private static final PlainWaveform CONTROL = PlainWaveform.certain(0, 100 * Bench.MILLI, 100 * Bench.MILLI);
    private static final PlainWaveform ACKNOWLEDGEMENT = PlainWaveform.certain(0, 50 * Bench.MILLI, 50 * Bench.MILLI);

    @Test
    void aSessionWithoutLossesIsClosedAfterTheTimesOfItsStepsAddedByHand() {
        Bench bench = new Bench();
        SessionResult result = bench.run(0);
        assertEquals(Outcome.CLOSED, result.outcome());
        // Bursts: call 1 s and its answer, introduction 0.2 s and its answer, offer and acceptance, over of 8 frames
        // 1.0 s,
        // acknowledgement 0.1 s, over of 2 frames 0.4 s, acknowledgement, hang-up and its answer. 10 ms before each
        // answer.
        long deliveredMillis =
                1000 + 10 + 1000 + 10 + 200 + 10 + 200 + 10 + 200 + 10 + 200 + 10 + 1000 + 10 + 100 + 10 + 400;
        assertEquals(OptionalLong.of(deliveredMillis * Bench.MILLI), result.deliveredNanos());
        assertEquals(OptionalLong.of((deliveredMillis + 110) * Bench.MILLI), result.confirmedNanos());
        assertEquals((deliveredMillis + 110 + 10 + 200 + 10 + 200) * Bench.MILLI, result.endedNanos());
        assertEquals(2010 * Bench.MILLI, result.budget().nanosOf(Cause.DIALLING));
        assertEquals(850 * Bench.MILLI, result.budget().nanosOf(Cause.INTRODUCTIONS));
        assertEquals(400 * Bench.MILLI, result.budget().nanosOf(Cause.PREAMBLES));
        assertEquals(1000 * Bench.MILLI, result.budget().nanosOf(Cause.NEW_PAYLOAD));
        assertEquals(0, result.budget().nanosOf(Cause.REPEATED_PAYLOAD));
        assertEquals(200 * Bench.MILLI, result.budget().nanosOf(Cause.ACKNOWLEDGEMENTS));
        assertEquals(30 * Bench.MILLI, result.budget().nanosOf(Cause.TURNAROUNDS));
        assertEquals(0, result.budget().nanosOf(Cause.SILENCE));
        assertEquals(420 * Bench.MILLI, result.budget().nanosOf(Cause.HANGING_UP));
        assertEquals(Ending.COMPLETED, result.ending());
    }

    @Test
    void aDownloadWithoutLossesIsClosed() {
        Bench bench = new Bench();
        bench.cargo = Cargo.from(End.FAR, List.of(1000L, 50L));
        SessionResult result = bench.run(0);
        assertEquals(Outcome.CLOSED, result.outcome());
        assertEquals(1050, result.progress().heldBytes(result.progress().size() - 1));
        assertEquals(Ending.COMPLETED, result.ending());
    }

    @Test
    void filesTravelBothWaysInOneSession() {
        Bench bench = new Bench();
        bench.cargo = new Cargo(List.of(300L, 20L), List.of(5000L, 1L));
        SessionResult result = bench.run(0);
        assertEquals(Outcome.CLOSED, result.outcome());
        List<OptionalLong> files = result.filesDeliveredNanos();
        for (int file = 1; file < 4; file++) {
            assertTrue(files.get(file - 1).getAsLong() < files.get(file).getAsLong());
        }
        assertEquals(result.deliveredNanos(), files.get(3));
    }

    @Test
    void whenTheHangUpIsNeverAnsweredAllIsConfirmedButNotClosed() {
        Bench bench = new Bench();
        SessionResult undisturbed = bench.run(0);
        bench.control = CONTROL.with(
                (listener, start) -> start >= undisturbed.confirmedNanos().getAsLong() ? 0 : 1);
        SessionResult result = bench.run(0);
        assertEquals(Outcome.CONFIRMED_NOT_CLOSED, result.outcome());
        assertEquals(undisturbed.confirmedNanos(), result.confirmedNanos());
        assertEquals(OptionalLong.empty(), result.closedNanos());
        assertEquals(Ending.HANG_UP_UNANSWERED, result.ending());
    }

    @Test
    void whenTheHangUpIsHeardButItsAnswersAreNotTheSenderCanNotCallItClosed() {
        Bench bench = new Bench();
        SessionResult undisturbed = bench.run(0);
        bench.control = CONTROL.with((listener, start) ->
                listener == End.NEAR && start >= undisturbed.confirmedNanos().getAsLong() ? 0 : 1);
        assertEquals(Outcome.CONFIRMED_NOT_CLOSED, bench.run(0).outcome());
    }

    @Test
    void aDownloadWhoseHangUpIsNeverHeardEndsByItselfAtTheStationThatDialled() {
        Bench bench = new Bench();
        bench.cargo = Cargo.from(End.FAR, List.of(1000L));
        SessionResult undisturbed = bench.run(0);
        bench.control = CONTROL.with(
                (listener, start) -> start >= undisturbed.confirmedNanos().getAsLong() ? 0 : 1);
        SessionResult result = bench.run(0);
        assertEquals(Outcome.CONFIRMED_NOT_CLOSED, result.outcome());
        assertEquals(Ending.NOTHING_MORE_HEARD, result.ending());
        assertEquals(0, result.linksLost());
    }

    @Test
    void whenNoAcknowledgementIsEverHeardAllIsDeliveredButUnconfirmed() {
        Bench bench = new Bench();
        bench.cargo = Cargo.from(End.NEAR, List.of(800L));
        bench.acknowledgement = ACKNOWLEDGEMENT.with((listener, start) -> 0);
        bench.rules = new SessionRules(3, Bench.SECOND, 1, 3, true, 0, true, 0);
        SessionResult result = bench.run(0);
        assertEquals(Outcome.DELIVERED_UNCONFIRMED, result.outcome());
        assertEquals(5, result.oversSent());
        assertEquals(5, result.acknowledgementsLost());
        assertEquals(1, result.linksLost());
        assertEquals(Ending.LINK_LOST, result.ending());
    }

    @Test
    void aResumedLinkConfirmsWhatWasDeliveredWithoutSendingItAgain() {
        Bench bench = new Bench();
        bench.cargo = Cargo.from(End.NEAR, List.of(800L));
        bench.acknowledgement = ACKNOWLEDGEMENT.with((listener, start) -> 0);
        SessionResult result = bench.run(0);
        assertEquals(Outcome.CLOSED, result.outcome());
        assertEquals(5, result.oversSent());
        assertEquals(1, result.linksLost());
    }

    @Test
    void whenNobodyAnswersItGivesUpAfterAllCallsAndRedials() {
        Bench bench = new Bench();
        bench.call = PlainWaveform.losing(0, 500 * Bench.MILLI, 500 * Bench.MILLI, 1);
        SessionResult result = bench.run(0);
        assertEquals(Outcome.GAVE_UP, result.outcome());
        // Three dialling rounds of three calls; each call lasts 1 s and waits 10 ms and 1 s (and 1 ns); between the
        // calls of
        // a round 1 s, between the rounds 10 s.
        assertEquals((9 * 2010 + 6 * 1000 + 2 * 10_000) * Bench.MILLI + 9, result.endedNanos());
        assertEquals(result.endedNanos(), result.budget().nanosOf(Cause.DIALLING));
        assertEquals(Ending.NEVER_LINKED, result.ending());
    }

    @Test
    void whenNoFrameComesThroughTheOperatorLosesPatience() {
        Bench bench = new Bench();
        bench.dataRates = List.of(PlainWaveform.losing(100, 200 * Bench.MILLI, 100 * Bench.MILLI, 1));
        bench.rules = new SessionRules(3, Bench.SECOND, 1, 3, true, 1000, true, 10 * Bench.SECOND);
        bench.patience = 60 * Bench.SECOND;
        SessionResult result = bench.run(0);
        assertEquals(Outcome.GAVE_UP, result.outcome());
        assertEquals(60 * Bench.SECOND, result.endedNanos());
        assertEquals(Ending.OUT_OF_PATIENCE, result.ending());
    }

    @Test
    void atTheHorizonItIsStillRunning() {
        Bench bench = new Bench();
        bench.dataRates = List.of(PlainWaveform.losing(100, 200 * Bench.MILLI, 100 * Bench.MILLI, 1));
        bench.rules = new SessionRules(3, Bench.SECOND, 1, 3, true, 1000, true, 10 * Bench.SECOND);
        SessionResult result = bench.run(0, 60 * Bench.SECOND);
        assertEquals(Outcome.RUNNING, result.outcome());
        assertEquals(60 * Bench.SECOND, result.endedNanos());
        assertEquals(60 * Bench.SECOND, result.budget().totalNanos());
        assertEquals(Ending.AT_HORIZON, result.ending());
    }

    @Test
    void whoDialsInVainUntilPatienceOrTheHorizonEndsNeverLinked() {
        Bench bench = new Bench();
        bench.call = PlainWaveform.losing(0, 500 * Bench.MILLI, 500 * Bench.MILLI, 1);
        assertEquals(
                Ending.NEVER_LINKED_AT_HORIZON, bench.run(0, 20 * Bench.SECOND).ending());
        bench.patience = 20 * Bench.SECOND;
        assertEquals(Ending.NEVER_LINKED_OUT_OF_PATIENCE, bench.run(0).ending());
    }

    /** The link comes and then goes for good: that no later call is answered does not make it a link never made. */
    @Test
    void callsInVainAfterALostLinkAreALostLink() {
        Bench bench = new Bench();
        bench.dataRates = List.of(PlainWaveform.losing(100, 200 * Bench.MILLI, 100 * Bench.MILLI, 1));
        bench.call = PlainWaveform.certain(0, 500 * Bench.MILLI, 500 * Bench.MILLI)
                .with((listener, start) -> start < 5 * Bench.SECOND ? 1 : 0);
        SessionResult result = bench.run(0);
        assertEquals(1, result.linksLost());
        assertEquals(Ending.LINK_LOST, result.ending());
    }
}
