package org.ionohaul.link;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.channel.End;
import org.junit.jupiter.api.Test;

/** Two radios on one frequency: who hears what, and when. A short burst lasts 100 ms. */
final class StationTest {
    private static final long MILLI = 1_000_000L;

    private final List<String> events = new ArrayList<>();

    private Link link(StationTimes times, long propagationNanos) {
        Link link = PlainLink.pair(PlainLink.parts(times), propagationNanos, new LinkTrace() {});
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
}
