package org.ionohaul.waveform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ionohaul.channel.Decibels;
import org.junit.jupiter.api.Test;

final class RatioTableTest {
    private final RatioTable shannon = RatioTable.ofRising(0, Math::log1p);

    @Test
    void slopeAndBendAreThoseOfTheFunction() {
        // ln(1 + x): slope 1 / (1 + x), bend -1 / (1 + x)^2. Read over one cell, a 128th of an octave, and over two.
        RatioTable table = RatioTable.ofRising(0, Math::log1p);
        for (double x = 1e-4; x < 1e5; x *= 1.37) {
            assertEquals(1 / (1 + x), table.slope(x), 0.008 / (1 + x));
            assertEquals(-1 / ((1 + x) * (1 + x)), table.bend(x), 0.02 / ((1 + x) * (1 + x)));
        }
        assertEquals(1, table.slope(-1), 1e-4);
        assertEquals(-2, table.at(-2), 2e-4);
        assertEquals(0, table.slope(1e9));
    }

    @Test
    void readingIsCloseToTheFunctionEverywhere() {
        for (double db = -60; db <= 50; db += 0.017) {
            double ratio = Decibels.toRatio(db);
            assertEquals(Math.log1p(ratio), shannon.at(ratio), 1e-5, db + " dB");
        }
    }

    @Test
    void inverseUndoesReading() {
        for (double db = -60; db <= 50; db += 0.17) {
            double ratio = Decibels.toRatio(db);
            assertEquals(ratio, shannon.inverse(shannon.at(ratio)), 1e-9 * ratio, db + " dB");
        }
    }

    @Test
    void beyondTheEndsTheTableStaysPut() {
        assertEquals(0, shannon.at(0));
        assertEquals(shannon.at(0x1p17), shannon.at(1e30));
        assertEquals(0, shannon.inverse(-1));
        assertEquals(0x1p17, shannon.inverse(1000));
    }

    @Test
    void aPlateauIsLeftAtItsBeginning() {
        RatioTable capped = RatioTable.ofRising(0, ratio -> Math.min(ratio, 4));
        assertEquals(4, capped.inverse(4), 1e-12);
        assertEquals(4, capped.inverse(5), 1e-12);
    }

    @Test
    void notANumberStaysNotANumber() {
        assertTrue(Double.isNaN(shannon.at(Double.NaN)));
    }
}
