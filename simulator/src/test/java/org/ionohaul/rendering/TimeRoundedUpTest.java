package org.ionohaul.rendering;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

final class TimeRoundedUpTest {
    @Test
    void aLengthThatMustNotBeTooShortIsNeverRoundedDown() {
        assertEquals("1 h 1 min", TimeText.lengthRoundedUp(3625));
        assertEquals("1 h", TimeText.lengthRoundedUp(3600));
        assertEquals("1 h", TimeText.lengthRoundedUp(3599.2));
        assertEquals("4 min 21 s", TimeText.lengthRoundedUp(260.1));
    }
}
