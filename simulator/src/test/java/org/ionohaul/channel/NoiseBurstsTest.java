package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** How a stretch of time divides by what is added to its noise. */
final class NoiseBurstsTest {
    @Test
    void levelsAreKeptApartAndEqualOnesTogether() {
        NoiseBursts bursts = new NoiseBursts();
        bursts.add(10, 0.25, 0.001);
        bursts.add(100, 0.05, 0.002);
        bursts.add(10, 0.125, 0.003);
        assertEquals(2, bursts.levels());
        assertEquals(10, bursts.power(0));
        assertEquals(0.375, bursts.share(0));
        assertEquals(0.001, bursts.seconds(0));
        assertEquals(100, bursts.power(1));
        assertEquals(0.05, bursts.share(1));
        assertEquals(0.002, bursts.seconds(1));
        assertEquals(10 * 0.375 + 100 * 0.05, bursts.meanPower(), 1e-12);
    }

    @Test
    void thereIsRoomForAnyNumberOfLevels() {
        NoiseBursts bursts = new NoiseBursts();
        for (int level = 1; level <= 9; level++) {
            bursts.add(level, 0.01 * level, 0.001 * level);
        }
        assertEquals(9, bursts.levels());
        for (int level = 0; level < 9; level++) {
            assertEquals(level + 1, bursts.power(level));
            assertEquals(0.01 * (level + 1), bursts.share(level));
            assertEquals(0.001 * (level + 1), bursts.seconds(level));
        }
        bursts.clear();
        assertEquals(0, bursts.levels());
        assertEquals(0, bursts.meanPower());
    }
}
