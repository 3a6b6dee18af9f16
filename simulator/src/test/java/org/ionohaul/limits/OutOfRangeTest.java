package org.ionohaul.limits;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

final class OutOfRangeTest {
    @Test
    void aRefusalNamesComponentDemandAndValue() {
        OutOfRange refusal =
                assertThrows(OutOfRange.class, () -> OutOfRange.unless(false, "windowFrames", "must be at least 1", 0));
        assertEquals("windowFrames", refusal.component());
        assertEquals("must be at least 1", refusal.demand());
        assertEquals("windowFrames must be at least 1: 0", refusal.getMessage());
    }

    @Test
    void whatIsInRangePasses() {
        assertDoesNotThrow(() -> OutOfRange.unless(true, "windowFrames", "must be at least 1", 1));
    }
}
