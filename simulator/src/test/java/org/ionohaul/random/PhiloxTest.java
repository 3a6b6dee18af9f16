package org.ionohaul.random;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.LongStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.Philox4x64;
import org.junit.jupiter.api.Test;

/** The generator gives the numbers of Commons RNG's, whose known answers {@link TrialStreamsTest} asks for. */
final class PhiloxTest {
    private static final int DRAWS = 1001;

    @Test
    void givesTheNumbersOfTheLibraryWhateverTheAddress() {
        long[] words = {0, 1, -1, Long.MIN_VALUE, Long.MAX_VALUE, 0x0123456789abcdefL, 0xfedcba9876543210L};
        for (int shift = 0; shift < words.length; shift++) {
            long[] address = rotated(words, shift);
            UniformRandomProvider library =
                    new Philox4x64(new long[] {address[0], address[1], 0, address[2], address[3], address[4]});
            UniformRandomProvider own = new Philox(address[0], address[1], address[2], address[3], address[4]);
            for (int draw = 0; draw < DRAWS; draw++) {
                assertEquals(library.nextLong(), own.nextLong(), "word " + draw + " of address " + shift);
            }
        }
    }

    @Test
    void givesTheSameOfEveryKind() {
        UniformRandomProvider library = new Philox4x64(new long[] {3, 1, 0, 4, 1, 5});
        UniformRandomProvider own = new Philox(3, 1, 4, 1, 5);
        for (int draw = 0; draw < DRAWS; draw++) {
            assertEquals(library.nextDouble(), own.nextDouble());
            assertEquals(library.nextInt(), own.nextInt());
            assertEquals(library.nextInt(7), own.nextInt(7));
            assertEquals(library.nextBoolean(), own.nextBoolean());
            assertEquals(library.nextLong(1_000_000_007L), own.nextLong(1_000_000_007L));
        }
    }

    private static long[] rotated(long[] words, int by) {
        return LongStream.range(0, words.length)
                .map(i -> words[(int) (i + by) % words.length])
                .toArray();
    }
}
