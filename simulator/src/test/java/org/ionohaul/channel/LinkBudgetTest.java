package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Levels by hand. Source of the loss: ITU-R P.533, equation 18, which is free-space loss (ITU-R P.525, equation 4). */
final class LinkBudgetTest {
    /** ITU-R P.525: 32.45 dB at 1 MHz and 1 km, 20 dB more a decade of either. */
    @Test
    void lossGrowsWithFrequencyAndDistance() {
        assertEquals(32.45, new LinkBudget(0, 0, 0, 1e6, 1e3, 0).lossDb(), 1e-12);
        assertEquals(92.45, new LinkBudget(0, 0, 0, 10e6, 100e3, 0).lossDb(), 1e-12);
        assertEquals(101.45, new LinkBudget(0, 0, 0, 10e6, 100e3, 9).lossDb(), 1e-12);
    }

    @Test
    void bothAntennasHelp() {
        assertEquals(50 + 2 - 3 - 92.45, new LinkBudget(50, 2, -3, 10e6, 100e3, 0).receivedDbm(), 1e-12);
    }

    @Test
    void hundredWattsAre50Dbm() {
        assertEquals(50, LinkBudget.dbmOfWatts(100), 1e-12);
    }
}
