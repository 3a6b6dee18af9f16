package org.ionohaul.link;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Reception;
import org.ionohaul.engine.Engine;
import org.ionohaul.waveform.SteadyReception;
import org.junit.jupiter.api.Test;

/** A station that needs 1 s to notice others, of whom one talks from 5 to 8 s; a call lasts 100 ms, a wait 1 to 4 s. */
final class BusyDetectionTest {
    private static final long SECOND = 1_000_000_000L;
    private static final long NEED = SECOND;

    private final List<Long> sent = new ArrayList<>();

    private List<Long> callsAt(long busyDetectionNanos, long... tenths) {
        return sentAt(busyDetectionNanos, Message.CALL, tenths);
    }

    private List<Long> sentAt(long busyDetectionNanos, Message message, long... tenths) {
        Radio radio = new Radio(new StationTimes(0, 0, 0, 0), FoldBack.NEVER, busyDetectionNanos);
        Reception steady = new SteadyReception(10);
        ChannelWatch visitor = (end, from, until) -> from >= 5 * SECOND && until < 8 * SECOND;
        Ether ether = new PairEther(steady, steady, visitor, 0);
        LinkParts parts = PlainLink.parts(radio, PlainLink.rules(ArqScheme.SELECTIVE_REPEAT, true));
        Link link = new Link(parts, new Medium(new Engine(), ether, 2), PairEther.NEAR, PairEther.FAR, new LinkTrace() {
            @Override
            public void onSent(End from, Burst burst, long durationNanos) {
                sent.add(burst.startNanos() * 10 / SECOND);
            }
        });
        for (long tenth : tenths) {
            link.engine()
                    .schedule(tenth * SECOND / 10, () -> link.station(End.NEAR).answer(message, 0, 0));
        }
        link.engine().run();
        return sent;
    }

    @Test
    void whoHasJustBegunIsNotNoticed() {
        assertEquals(List.of(58L), callsAt(NEED, 58));
    }

    @Test
    void oneLookNoticesAtOnce() {
        callsAt(0, 58);
        assertEquals(1, sent.size());
        assertTrue(sent.get(0) >= 80, sent::toString);
    }

    /** It has sent until 6.0 s and may look at 7.0 s, when it has listened for just a second. */
    @Test
    void whoHasListenedForJustLongEnoughNotices() {
        callsAt(NEED, 59, 70);
        assertEquals(2, sent.size());
        assertTrue(sent.get(1) >= 80, sent::toString);
    }

    @Test
    void onlyCallsAndOversWait() {
        assertEquals(List.of(62L), sentAt(0, Message.POLL, 62));
    }

    @Test
    void whoHasTalkedForLongEnoughIsNoticedAndWaitedFor() {
        callsAt(NEED, 62);
        assertEquals(1, sent.size());
        assertTrue(sent.get(0) >= 80, sent::toString);
    }

    /** It sends from 5.9 to 6.0 s, not noticing; at 6.5 s it has listened for half a second only, though others still talk. */
    @Test
    void whoHasJustSentHasNotListened() {
        assertEquals(List.of(59L, 65L), callsAt(NEED, 59, 65));
    }

    @Test
    void whoHasListenedAgainForLongEnoughNotices() {
        callsAt(NEED, 59, 71);
        assertEquals(2, sent.size());
        assertTrue(sent.get(1) >= 80, sent::toString);
    }
}
