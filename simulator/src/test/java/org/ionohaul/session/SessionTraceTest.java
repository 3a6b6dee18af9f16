package org.ionohaul.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.channel.End;
import org.ionohaul.link.ArqRules;
import org.ionohaul.link.Burst;
import org.ionohaul.link.Message;
import org.junit.jupiter.api.Test;

/** Who watches a session is told everything, when it happens. Times in milliseconds, added by hand from the bench's. */
final class SessionTraceTest {
    private final Bench bench = new Bench();
    private final Diary diary = new Diary();

    /** 1 s of call, 10 ms, 1 s of answer; 10 ms before each burst; talk lasts 200 ms each; overs of 1 s and 400 ms. */
    @Test
    void aSessionWithoutLossesIsToldStepByStep() {
        SessionResult result = run();
        assertEquals(
                List.of(
                        "2010 linked",
                        "3860 holds 800 bytes",
                        "4380 holds 1000 bytes",
                        "4380 delivered 0",
                        "4490 confirmed 0",
                        "4700 FAR hung up",
                        "4910 NEAR hung up",
                        "4910 ended COMPLETED"),
                diary.lines);
        assertEquals(
                List.of(
                        Message.CALL,
                        Message.CALL_ANSWER,
                        Message.INTRODUCTION,
                        Message.INTRODUCTION_ANSWER,
                        Message.OFFER,
                        Message.ACCEPT,
                        Message.OVER,
                        Message.ACKNOWLEDGEMENT,
                        Message.OVER,
                        Message.ACKNOWLEDGEMENT,
                        Message.HANG_UP,
                        Message.HANG_UP_ANSWER),
                diary.sent);
        assertEquals(diary.sent, diary.arrived);
        assertEquals(result.endedNanos(), diary.spentNanos);
    }

    /** No acknowledgement of the first link is heard: five silences lose it. */
    @Test
    void silencesAndLostLinksAreTold() {
        bench.acknowledgement = PlainWaveform.losing(0, 50 * Bench.MILLI, 50 * Bench.MILLI, 1);
        bench.cargo = Cargo.from(End.NEAR, List.of(800L));
        bench.rules = new SessionRules(3, Bench.SECOND, 1, 3, true, 0, true, 0);
        SessionResult result = run();
        assertEquals(5, diary.silences);
        assertEquals(
                1, diary.lines.stream().filter(it -> it.endsWith("NEAR lost")).count());
        assertEquals(
                1, diary.lines.stream().filter(it -> it.endsWith("FAR lost")).count());
        assertTrue(diary.lines.get(diary.lines.size() - 1).endsWith("FAR lost"), diary.lines::toString);
        assertEquals(result.endedNanos(), diary.spentNanos);
    }

    @Test
    void whoFindsTheChannelOccupiedIsTold() {
        bench.listensFirst = true;
        bench.watch = (end, from, until) -> until < 500 * Bench.MILLI;
        run();
        assertEquals(List.of("0 occupied for NEAR"), diary.lines.subList(0, 1));
    }

    /** Each is allowed three times; from its first on no control burst is heard. */
    @Test
    void whatIsNeverAnsweredIsSentAsOftenAsAllowedAndThenTheLinkIsLost() {
        bench.rules = new SessionRules(3, Bench.SECOND, 1, 3, true, 0, true, 0);
        long linked = 2010 * Bench.MILLI;
        assertSentThrice(Message.INTRODUCTION, linked, Ending.LINK_LOST);
        assertSentThrice(Message.OFFER, linked + 420 * Bench.MILLI, Ending.LINK_LOST);
        assertSentThrice(Message.HANG_UP, 4490 * Bench.MILLI, Ending.HANG_UP_UNANSWERED);
        bench.cargo = Cargo.from(End.FAR, List.of(1000L));
        assertSentThrice(Message.REQUEST, linked + 420 * Bench.MILLI, Ending.LINK_LOST);
    }

    private void assertSentThrice(Message message, long lostFromNanos, Ending ending) {
        diary.clear();
        bench.control = PlainWaveform.certain(0, 100 * Bench.MILLI, 100 * Bench.MILLI)
                .with((listener, startNanos) -> startNanos > lostFromNanos ? 0 : 1);
        assertEquals(ending, run().ending(), message::toString);
        assertEquals(3, diary.sent.stream().filter(it -> it == message).count(), message::toString);
        assertEquals(message, diary.sent.get(diary.sent.size() - 1));
    }

    /** The far end's first offer is lost; the request is repeated, which is answered by the offer at once. */
    @Test
    void aRequestThatIsRepeatedIsAnsweredByTheOfferAgain() {
        bench.cargo = Cargo.from(End.FAR, List.of(100L));
        // Linked after 2010 ms, introduced after 430 more; the request lasts from 2440 to 2640, the offer from 2650 on.
        bench.control = PlainWaveform.certain(0, 100 * Bench.MILLI, 100 * Bench.MILLI)
                .with((listener, startNanos) -> startNanos == 2650 * Bench.MILLI ? 0 : 1);
        assertEquals(Outcome.CLOSED, run().outcome());
        int offer = diary.sent.indexOf(Message.OFFER);
        assertEquals(
                List.of(Message.REQUEST, Message.OFFER, Message.REQUEST, Message.OFFER, Message.ACCEPT),
                diary.sent.subList(offer - 1, offer + 4));
    }

    /** The first acknowledgement of the station that dialled is lost; the other one polls and hears another. */
    @Test
    void aPollIsAnsweredByTheStationThatDialledToo() {
        bench.cargo = Cargo.from(End.FAR, List.of(1000L));
        bench.answerToSilence = ArqRules.AnswerToSilence.POLL;
        boolean[] hasLost = {false};
        bench.acknowledgement = PlainWaveform.certain(0, 50 * Bench.MILLI, 50 * Bench.MILLI)
                .with((listener, startNanos) -> {
                    double chance = hasLost[0] ? 1 : 0;
                    hasLost[0] = true;
                    return chance;
                });
        SessionResult result = run();
        assertEquals(Outcome.CLOSED, result.outcome());
        assertEquals(1, diary.sent.stream().filter(it -> it == Message.POLL).count());
        assertEquals(2, result.oversSent());
        assertEquals(1, result.acknowledgementsLost());
    }

    /** An over of 8 frames, of which the first is lost, lasts 1 s, the next of 3 half as long, however long the way. */
    @Test
    void theUseOfADataRateIsCounted() {
        bench.propagation = 30 * Bench.MILLI;
        boolean[] hasLost = {false};
        bench.dataRates = List.of(
                PlainWaveform.certain(100, 200 * Bench.MILLI, 100 * Bench.MILLI).with((listener, startNanos) -> {
                    double chance = hasLost[0] ? 1 : 0;
                    hasLost[0] = true;
                    return chance;
                }));
        SessionResult result = run();
        assertEquals(2, result.oversSent());
        assertEquals(List.of(new DataRateUse(1500 * Bench.MILLI, 11, 1)), result.dataRates());
    }

    private SessionResult run() {
        bench.trace = diary;
        return bench.run(0);
    }

    private static final class Diary implements SessionTrace {
        private final List<String> lines = new ArrayList<>();
        private final List<Message> sent = new ArrayList<>();
        private final List<Message> arrived = new ArrayList<>();
        private int silences;
        private long spentNanos;

        void clear() {
            sent.clear();
            spentNanos = 0;
        }

        private void note(long atNanos, String what) {
            lines.add(atNanos / Bench.MILLI + " " + what);
        }

        @Override
        public void onSent(End from, Burst burst, long durationNanos) {
            sent.add(burst.message());
        }

        @Override
        public void onArrived(End at, Burst burst, boolean isHeard, long atNanos) {
            arrived.add(burst.message());
        }

        @Override
        public void onOccupied(End at, long atNanos) {
            note(atNanos, "occupied for " + at);
        }

        @Override
        public void onSilence(End at, long atNanos) {
            silences++;
        }

        /** Stretches follow one another without a gap. */
        @Override
        public void onSpent(Cause cause, long fromNanos, long untilNanos) {
            assertEquals(spentNanos, fromNanos);
            spentNanos = untilNanos;
        }

        @Override
        public void onLinked(long atNanos) {
            note(atNanos, "linked");
        }

        @Override
        public void onLost(End at, long atNanos) {
            note(atNanos, at + " lost");
        }

        @Override
        public void onProgress(long bytes, long atNanos) {
            note(atNanos, "holds " + bytes + " bytes");
        }

        @Override
        public void onDelivered(int file, long atNanos) {
            note(atNanos, "delivered " + file);
        }

        @Override
        public void onConfirmed(int file, long atNanos) {
            note(atNanos, "confirmed " + file);
        }

        @Override
        public void onHungUp(End at, long atNanos) {
            note(atNanos, at + " hung up");
        }

        @Override
        public void onEnded(Ending why, long atNanos) {
            note(atNanos, "ended " + why);
        }
    }
}
