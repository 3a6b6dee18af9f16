package org.ionohaul.link;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

final class BurstTest {
    private final Burst burst = new Burst();

    /** 0 to 29 were on the air before: two frames are old, one is new by a tenth, one wholly. */
    @Test
    void framesThatWereCutAnewAreNewInPart() {
        burst.openOver(7, 2);
        burst.addFrame(0, 10, 29);
        burst.addFrame(10, 20, 29);
        burst.addFrame(20, 30, 29);
        burst.addFrame(30, 40, 29);
        assertEquals(1, burst.newFrames());
        assertEquals(1.1, burst.newPayloadFrames(), 1e-12);
        assertEquals(4, burst.frames());
        assertEquals(2, burst.dataRate());
        assertEquals(7, burst.number());
        burst.openOver(7, 2);
        burst.addFrame(0, 29, 29);
        burst.addFrame(29, 40, 29);
        assertEquals(1, burst.newFrames());
        assertEquals(1, burst.newPayloadFrames());
    }

    @Test
    void whatWasDecodedIsForgottenWhenItLeavesAgain() {
        burst.openOver(0, 1);
        for (int frame = 0; frame < 16; frame++) {
            burst.addFrame(frame, frame + 1, 0);
        }
        burst.leave(5, true, 0, 1);
        burst.decode(3, false);
        burst.decode(15, true);
        assertEquals(2, burst.decodedFrames());
        assertTrue(burst.isDecoded(3));
        assertFalse(burst.isWrong(3));
        assertTrue(burst.isWrong(15));
        assertFalse(burst.isDecoded(4));
        assertTrue(burst.answers());
        burst.leave(9, false, 1, 0);
        assertEquals(0, burst.decodedFrames());
        assertFalse(burst.isWrong(15));
        assertFalse(burst.answers());
        assertEquals(9, burst.startNanos());
    }

    @Test
    void aPollIsOneBlockAndLeavesTheOverKnown() {
        burst.openOver(0, 1);
        burst.addFrame(0, 10, 0);
        burst.addFrame(10, 20, 0);
        burst.say(Message.POLL, 3, 44);
        assertEquals(1, burst.frames());
        assertEquals(2, burst.framesOfOver());
        assertEquals(44, burst.bytes());
    }

    @Test
    void anAcknowledgementTellsRangesOrOnlyTheirBeginning() {
        ByteRanges held = new ByteRanges();
        held.add(0, 10);
        held.add(20, 30);
        burst.acknowledge(1, held, ArqScheme.SELECTIVE_REPEAT, 4.5);
        assertTrue(burst.held().contains(20, 30));
        assertEquals(4.5, burst.snrDb());
        assertEquals(10, burst.bytes());
        burst.acknowledge(1, held, ArqScheme.GO_BACK_N, 4.5);
        assertTrue(burst.held().contains(0, 10));
        assertFalse(burst.held().contains(20, 21));
        burst.say(Message.HANG_UP, 0, 0);
        assertTrue(Double.isNaN(burst.snrDb()));
    }
}
