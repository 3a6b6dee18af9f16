package org.ionohaul.link;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.channel.End;
import org.junit.jupiter.api.Test;

/** Two radios on one frequency: who hears what, and when. A short burst lasts 100 ms. */
final class StationTest {
    private static final long MILLI = 1_000_000L;

    private final List<String> events = new ArrayList<>();
    private final List<Long> departures = new ArrayList<>();

    private Link link(StationTimes times, long propagationNanos) {
        return noting(PlainLink.pair(PlainLink.parts(times), propagationNanos, new LinkTrace() {}));
    }

    private Link noting(Link link) {
        for (End end : End.values()) {
            link.station(end).operate(new Protocol() {
                @Override
                public void onBurst(Burst burst) {
                    events.add(end + " hears " + burst.message() + " at "
                            + link.engine().nowNanos() / MILLI);
                }

                @Override
                public void onSilence() {
                    events.add(end + " hears nothing until " + link.engine().nowNanos() / MILLI);
                }
            });
        }
        return link;
    }

    @Test
    void aBurstIsHeardWhenItsLastSymbolHasArrived() {
        Link link = link(new StationTimes(0, 20 * MILLI, 0, 0), 3 * MILLI);
        link.station(End.NEAR).ask(Message.CALL, 0, 0, Message.CALL_ANSWER, false, 0);
        link.engine().run();
        // Relays 20 ms, burst 100 ms, 3 ms of way; then waits 2 x 3 ms, 20 ms of the other's relays and 100 ms.
        assertEquals(List.of("FAR hears CALL at 123", "NEAR hears nothing until 246"), events);
    }

    @Test
    void whoSendsHearsNothing() {
        Link link = link(new StationTimes(0, 0, 0, 0), 0);
        link.station(End.NEAR).answer(Message.CALL, 0, 0);
        link.station(End.FAR).answer(Message.CALL, 0, 0);
        link.engine().run();
        assertEquals(List.of(), events);
    }

    @Test
    void whoBeginsToSendWhileABurstArrivesLosesIt() {
        Link link = link(new StationTimes(0, 0, 0, 0), 0);
        link.station(End.NEAR).answer(Message.CALL, 0, 0);
        link.engine().schedule(99 * MILLI, () -> link.station(End.FAR).answer(Message.POLL, 0, 0));
        link.engine().run();
        assertEquals(List.of(), events);
    }

    @Test
    void aReceiverThatHasNotRecoveredMissesTheBurst() {
        // Near leaves at 60 ms, since it gives the other 30 + 10 + 20 ms, is done at 160 and hears from 220 on. Far
        // leaves
        // 60 ms after it is told to.
        farSendsAt(159 * MILLI);
        assertEquals(List.of("FAR hears CALL at 160"), events);
        events.clear();
        farSendsAt(160 * MILLI);
        assertEquals(List.of("FAR hears CALL at 160", "NEAR hears POLL at 320"), events);
    }

    private void farSendsAt(long nanos) {
        Link link = link(new StationTimes(30 * MILLI, 10 * MILLI, 20 * MILLI, 0), 0);
        link.station(End.NEAR).answer(Message.CALL, 0, 0);
        link.engine().schedule(nanos, () -> link.station(End.FAR).answer(Message.POLL, 0, 0));
        link.engine().run();
    }

    @Test
    void anAnswerInTimeStopsTheWait() {
        Link link = link(new StationTimes(0, 0, 0, 5 * MILLI), MILLI);
        Station near = link.station(End.NEAR);
        Station far = link.station(End.FAR);
        far.operate(new Protocol() {
            @Override
            public void onBurst(Burst burst) {
                far.answer(Message.CALL_ANSWER, 0, 0);
            }

            @Override
            public void onSilence() {}
        });
        near.operate(new Protocol() {
            @Override
            public void onBurst(Burst burst) {
                near.stopWaiting();
                events.add("answered at " + near.nowNanos() / MILLI);
            }

            @Override
            public void onSilence() {
                events.add("silence");
            }
        });
        near.ask(Message.CALL, 0, 0, Message.CALL_ANSWER, false, 0);
        link.engine().run();
        assertEquals(List.of("answered at 207"), events);
    }

    @Test
    void aSecondBurstCanNotBePreparedWhileTheFirstIsOnItsWay() {
        Link link = link(new StationTimes(0, 0, 0, 0), 0);
        link.station(End.NEAR).answer(Message.CALL, 0, 0);
        link.engine().runUntil(50 * MILLI);
        assertThrows(IllegalStateException.class, () -> link.station(End.NEAR).answer(Message.POLL, 0, 0));
    }

    @Test
    void whatIsAskedIsSaid() {
        Link link = PlainLink.pair(PlainLink.parts(new StationTimes(0, 0, 0, 0)), 0, new LinkTrace() {
            @Override
            public void onSent(End from, Burst burst, long durationNanos) {
                events.add(burst.message() + " " + burst.number() + " " + burst.bytes() + " " + burst.answers());
            }
        });
        link.station(End.NEAR).ask(Message.OFFER, 3, 500, Message.ACCEPT, true, 0);
        link.engine().run();
        link.station(End.NEAR).ask(Message.CALL, 0, 0, Message.CALL_ANSWER, false, 0);
        link.engine().run();
        assertEquals(List.of("OFFER 3 500 true", "CALL 0 0 false"), events);
    }

    @Test
    void whoFallsQuietSendsNothingMoreAndWaitsForNothing() {
        Link link = link(new StationTimes(0, 20 * MILLI, 0, 0), 0);
        Station near = link.station(End.NEAR);
        near.ask(Message.CALL, 0, 0, Message.CALL_ANSWER, false, 0);
        link.engine().runUntil(19 * MILLI);
        near.fallQuiet();
        link.engine().run();
        assertEquals(List.of(), events);
        near.ask(Message.CALL, 0, 0, Message.CALL_ANSWER, false, 0);
        link.engine().runUntil(150 * MILLI);
        near.fallQuiet();
        link.engine().run();
        // The clock stood at 20 ms, where it would have sent.
        assertEquals(List.of("FAR hears CALL at 140"), events);
    }

    /** Asked at 0 and again at 150 ms, before the first wait is over: one silence, after the second. */
    @Test
    void whoAsksAnewWaitsAnew() {
        Link link = link(new StationTimes(0, 0, 0, 0), 0);
        Station near = link.station(End.NEAR);
        near.ask(Message.CALL, 0, 0, Message.CALL_ANSWER, false, 0);
        link.engine().schedule(150 * MILLI, () -> near.ask(Message.CALL, 0, 0, Message.CALL_ANSWER, false, 0));
        link.engine().run();
        assertEquals(List.of("FAR hears CALL at 100", "FAR hears CALL at 250", "NEAR hears nothing until 350"), events);
    }

    /** The other end, had it answered until the silence, would be deaf for 30 + 10 + 20 ms; own relays take 10. */
    @Test
    void afterSilenceABurstWaitsUntilTheOtherEndCanHear() {
        Link link = link(new StationTimes(30 * MILLI, 10 * MILLI, 20 * MILLI, 0), 0);
        Station near = link.station(End.NEAR);
        near.operate(new Protocol() {
            @Override
            public void onBurst(Burst burst) {}

            @Override
            public void onSilence() {
                events.add("silence at " + near.nowNanos() / MILLI);
                near.answer(Message.POLL, 0, 0);
            }
        });
        near.ask(Message.CALL, 0, 0, Message.CALL_ANSWER, false, 0);
        link.engine().run();
        // 10 ms of relays and 100 of the call; an answer would come 60 ms later and last 100: silence at 270, poll at
        // 330.
        assertEquals(List.of("FAR hears CALL at 110", "silence at 270", "FAR hears POLL at 430"), events);
    }

    /** Overs of 200 ms at a beat of 500 ms: asked for early they leave at the beat, asked for late at once. */
    @Test
    void oversOfAModeWithARhythmLeaveAtItsBeat() {
        Link link = inRhythm(500, 10);
        link.engine().schedule(300 * MILLI, () -> sendOver(link));
        link.engine().schedule(1000 * MILLI, () -> sendOver(link));
        link.engine().schedule(1600 * MILLI, () -> sendOver(link));
        sendOver(link);
        link.engine().run();
        // The first leaves after relays of 10 ms. A beat that falls on the last moment to change over is kept: 1010.
        assertEquals(List.of(10L, 510L, 1010L, 1610L), departures);
    }

    /** An over of 200 ms is followed by silence when the relays must change for the next beat, not later. */
    @Test
    void inARhythmNobodyWaitsBeyondTheNextBeat() {
        Link link = inRhythm(280, 10);
        sendOver(link);
        link.engine().run();
        // Left at 10 ms; next beat at 290.
        assertEquals(List.of("FAR hears OVER at 213", "NEAR hears nothing until 280"), events);
        events.clear();
        Link patient = inRhythm(500, 10);
        sendOver(patient);
        patient.engine().run();
        // The acknowledgement would end 10 + 100 ms and two ways of 3 ms after the over.
        assertEquals(List.of("FAR hears OVER at 213", "NEAR hears nothing until 326"), events);
    }

    private Link inRhythm(long cycleMillis, long relayMillis) {
        ArqRules plain = PlainLink.rules(ArqScheme.SELECTIVE_REPEAT, false);
        ArqRules rules = new ArqRules(
                plain.scheme(),
                8,
                8,
                8,
                plain.longestOverNanos(),
                plain.combining(),
                0,
                plain.answerToSilence(),
                5,
                false,
                0,
                cycleMillis * MILLI);
        LinkParts parts = PlainLink.parts(new StationTimes(0, relayMillis * MILLI, 0, 0), rules);
        Link link = PlainLink.pair(parts, 3 * MILLI, new LinkTrace() {
            @Override
            public void onSent(End from, Burst burst, long durationNanos) {
                departures.add(burst.startNanos() / MILLI);
            }
        });
        return noting(link);
    }

    private static void sendOver(Link link) {
        Station near = link.station(End.NEAR);
        near.outgoing().openOver(0, 1);
        near.outgoing().addFrame(0, 10, 0);
        near.outgoing().addFrame(10, 20, 0);
        near.sendPrepared(false, link.timing().waitNanos(End.NEAR, Message.ACKNOWLEDGEMENT));
    }

    @Test
    void theSnrOfABurstIsMeasuredOverItsTimeOfArrival() {
        Link link = link(new StationTimes(0, 0, 0, 0), 3 * MILLI);
        List<Double> measured = new ArrayList<>();
        link.station(End.FAR).operate(new Protocol() {
            @Override
            public void onBurst(Burst burst) {
                measured.add(link.station(End.FAR).measuredSnrDb(burst));
            }

            @Override
            public void onSilence() {}
        });
        link.station(End.NEAR).answer(Message.CALL, 0, 0);
        link.engine().run();
        // 0 dB, measured with an error of 1 dB: beyond 5 dB once in a million.
        assertEquals(1, measured.size());
        assertEquals(0, measured.get(0), 5);
        assertNotEquals(0, measured.get(0));
    }
}
