package org.ionohaul.link;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import org.junit.jupiter.api.Test;

final class CombiningStoreTest {
    private final CombiningStore store = new CombiningStore(2);

    @Test
    void evidenceGathersUnderTheThresholdFirstDrawn() {
        store.turnTo(0, 3);
        store.keep(100, 0.4, 0.9);
        int at = store.find(100);
        store.gather(at, 0.7);
        assertEquals(0.7, store.evidence(store.find(100)));
        assertEquals(0.9, store.threshold(store.find(100)));
    }

    @Test
    void aFullStoreKeepsNoFurtherFrameUntilOneIsDecoded() {
        store.keep(0, 0.1, 0.5);
        store.keep(100, 0.2, 0.6);
        store.keep(200, 0.3, 0.7);
        assertEquals(CombiningStore.NONE, store.find(200));
        store.forget(store.find(0));
        assertEquals(CombiningStore.NONE, store.find(0));
        assertEquals(0.2, store.evidence(store.find(100)));
        assertEquals(0.6, store.threshold(store.find(100)));
        store.keep(200, 0.3, 0.7);
        assertEquals(0.3, store.evidence(store.find(200)));
    }

    @Test
    void framesOfAnotherFileOrDataRateDoNotAddUp() {
        store.turnTo(0, 3);
        store.keep(100, 0.4, 0.9);
        store.turnTo(0, 3);
        assertNotEquals(CombiningStore.NONE, store.find(100));
        store.turnTo(0, 4);
        assertEquals(CombiningStore.NONE, store.find(100));
        store.keep(100, 0.4, 0.9);
        store.turnTo(1, 4);
        assertEquals(CombiningStore.NONE, store.find(100));
    }

    @Test
    void anEmptiedStoreHoldsNothing() {
        store.keep(100, 0.4, 0.9);
        store.empty();
        assertEquals(CombiningStore.NONE, store.find(100));
    }
}
