package org.ionohaul.random;

import org.apache.commons.rng.core.source64.LongProvider;

/**
 * The counter-based generator Philox 4x64 with ten rounds of Salmon et al., "Parallel random numbers: as easy as 1, 2, 3"
 * (SC'11). The numbers are those of Commons RNG's, which on this Java finds its wide product by reflection and takes ten
 * times as long; a test compares them.
 */
final class Philox extends LongProvider {
    private static final int ROUNDS = 10;
    private static final int WORDS = 4;
    private static final long MULTIPLIER_0 = 0xD2E7470EE14C6C93L;
    private static final long MULTIPLIER_1 = 0xCA5A826395121157L;
    private static final long WEYL_0 = 0x9E3779B97F4A7C15L;
    private static final long WEYL_1 = 0xBB67AE8584CAA73BL;

    private final long key0;
    private final long key1;
    private final long counter2;
    private final long counter3;
    private long counter0;
    private long counter1;
    private long word0;
    private long word1;
    private long word2;
    private long word3;
    private int given = WORDS;

    /** Begins a stream: two words of key, the two highest of the counter, and the second lowest it begins with. */
    Philox(long key0, long key1, long counter1, long counter2, long counter3) {
        this.key0 = key0;
        this.key1 = key1;
        this.counter1 = counter1;
        this.counter2 = counter2;
        this.counter3 = counter3;
    }

    /** Returns the next word. The higher half of the counter stands: it takes 2^128 draws to reach it. */
    @Override
    public long next() {
        if (given == WORDS) {
            counter0++;
            if (counter0 == 0) {
                counter1++;
            }
            encipher();
            given = 0;
        }
        return switch (given++) {
            case 0 -> word0;
            case 1 -> word1;
            case 2 -> word2;
            default -> word3;
        };
    }

    private void encipher() {
        long c0 = counter0;
        long c1 = counter1;
        long c2 = counter2;
        long c3 = counter3;
        long k0 = key0;
        long k1 = key1;
        for (int round = 0; round < ROUNDS; round++) {
            long high0 = highProduct(MULTIPLIER_0, c0);
            long high1 = highProduct(MULTIPLIER_1, c2);
            long low0 = MULTIPLIER_0 * c0;
            long low1 = MULTIPLIER_1 * c2;
            c0 = high1 ^ c1 ^ k0;
            c1 = low1;
            c2 = high0 ^ c3 ^ k1;
            c3 = low0;
            k0 += WEYL_0;
            k1 += WEYL_1;
        }
        word0 = c0;
        word1 = c1;
        word2 = c2;
        word3 = c3;
    }

    /** Returns the upper half of an unsigned product whose first factor has its highest bit set. */
    private static long highProduct(long multiplier, long value) {
        return Math.multiplyHigh(multiplier, value) + value + (value >> (Long.SIZE - 1) & multiplier);
    }
}
