package org.ionohaul.waveform;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Characters of seven elements (ITU-R M.476), counted. */
final class ConstantRatioCodeTest {
    @Test
    void aWrongCharacterPassesAsOftenAsPatternsOfFourAndThreeAreCounted() {
        // From 0001111 to each of the 34 others with four of a kind.
        double rate = 0.1;
        double passing = 0;
        for (int received = 0; received < 128; received++) {
            if (Integer.bitCount(received) == 4 && received != 0b0001111) {
                int errors = Integer.bitCount(received ^ 0b0001111);
                passing += Math.pow(rate, errors) * Math.pow(1 - rate, 7 - errors);
            }
        }
        assertEquals(passing, ConstantRatioCode.undetectedError(rate), 1e-15);
        assertEquals(passing + Math.pow(0.9, 7), ConstantRatioCode.acceptance(rate), 1e-15);
    }
}
