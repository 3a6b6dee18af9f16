package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Expected sizes by decimal arithmetic. */
final class PayloadFileTest {
    @Test
    void aWholeNumberOfBytesStaysWhole() {
        assertEquals(770, compressed(1400, 0.55));
        assertEquals(660, compressed(1200, 0.55));
        assertEquals(550_000_000, compressed(1_000_000_000, 0.55));
    }

    @Test
    void aBegunByteCounts() {
        assertEquals(1, compressed(1, 0.01));
        assertEquals(334, compressed(1000, 0.3331));
    }

    private static long compressed(long size, double compression) {
        return PayloadFile.compressed("note", size, compression).bytes();
    }
}
