package org.ionohaul.random;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.Philox4x64;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;
import org.apache.commons.statistics.inference.ChiSquareTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Addressed streams: equal addresses agree, different ones have nothing in common. */
final class TrialStreamsTest {
    private static final TrialStreams STREAMS = new TrialStreams(42, 7);

    /**
     * The known answers published with Random123, the library of Salmon et al. (file kat_vectors, philox4x64 10 rounds;
     * from memory). They fix what each word of the generator's seed is: key, key, then the counter from its lowest word.
     * The generator counts up before its first block, so each counter here is one below the published one.
     */
    @Test
    void seedWordsAreTheKeyThenTheCounterFromItsLowestWord() {
        assertKnownAnswer(
                new long[] {0, 0, -1, -1, -1, -1},
                0x16554d9eca36314cL,
                0xdb20fe9d672d0fdcL,
                0xd7e772cee186176bL,
                0x7e68b68aec7ba23bL);
        assertKnownAnswer(
                new long[] {-1, -1, -2, -1, -1, -1},
                0x87b092c3013fe90bL,
                0x438c3c67be8d0224L,
                0x9cc7d7c69cd777b6L,
                0xa09caebf594f0ba0L);
        assertKnownAnswer(
                new long[] {
                    0x452821e638d01377L,
                    0xbe5466cf34e90c6cL,
                    0x243f6a8885a308d2L,
                    0x13198a2e03707344L,
                    0xa4093822299f31d0L,
                    0x082efa98ec4e6c89L
                },
                0xa528f45403e61d95L,
                0x38c72dbd566e9788L,
                0xa5a1610e72fd18b5L,
                0x57bd43b5e52b7fe6L);
    }

    @Test
    void equalAddressesGiveEqualStreams() {
        long[] once = draws(STREAMS.open(Purpose.FADING, 3), 1000);
        long[] again = draws(new TrialStreams(42, 7).open(Purpose.FADING, 3), 1000);
        assertArrayEquals(once, again);
        assertArrayEquals(
                draws(STREAMS.openBlock(Purpose.FADING, 3, 9), 1000),
                draws(STREAMS.openBlock(Purpose.FADING, 3, 9), 1000));
    }

    @Test
    void streamsOpenedBeforeChangeNothing() {
        TrialStreams streams = new TrialStreams(42, 7);
        draws(streams.open(Purpose.DECODING, 1), 1000);
        assertArrayEquals(draws(STREAMS.open(Purpose.FADING, 3), 1000), draws(streams.open(Purpose.FADING, 3), 1000));
    }

    /** A shared value among so few 64-bit draws has a chance of about 1e-9. */
    @Test
    void neighbouringStreamsShareNoValues() {
        List<UniformRandomProvider> neighbours = List.of(
                STREAMS.open(Purpose.FADING, 3),
                new TrialStreams(43, 7).open(Purpose.FADING, 3),
                new TrialStreams(42, 8).open(Purpose.FADING, 3),
                new TrialStreams(42, 6).open(Purpose.FADING, 3),
                STREAMS.open(Purpose.FADING, 2),
                STREAMS.open(Purpose.FADING, -3),
                STREAMS.open(Purpose.SLOW_VARIATION, 3),
                STREAMS.openBlock(Purpose.FADING, 3, 0),
                STREAMS.openBlock(Purpose.FADING, 3, 1),
                STREAMS.openBlock(Purpose.FADING, 3, -1),
                STREAMS.openBlock(Purpose.FADING, 2, 1),
                new TrialStreams(42, 8).openBlock(Purpose.FADING, 3, 1));
        int draws = 10_000;
        Set<Long> seen = new HashSet<>();
        for (UniformRandomProvider stream : neighbours) {
            LongStream.of(draws(stream, draws)).forEach(seen::add);
        }
        assertEquals(neighbours.size() * draws, seen.size());
    }

    /** A fast stream must not be seeded from values that the slow one of the same address hands out as well. */
    @Test
    void theSeedOfABlockIsNotPartOfAnyOpenedStream() {
        long[] opened = draws(STREAMS.open(Purpose.FADING, 3), 4);
        UniformRandomProvider seededFromIt = new XoShiRo256PlusPlus(opened);
        assertNotEquals(
                seededFromIt.nextLong(), STREAMS.openBlock(Purpose.FADING, 3, 0).nextLong());
    }

    /** Chi-squared over 256 equal cells of the top byte, 100,000 draws; one false alarm in ten thousand. */
    @ParameterizedTest
    @EnumSource(Purpose.class)
    void drawsAreUniform(Purpose purpose) {
        assertUniform(draws(STREAMS.open(purpose, 1), 100_000));
        assertUniform(draws(STREAMS.openBlock(purpose, 1, 5), 100_000));
    }

    /** The first draws of successive trials, elements and blocks are what most sample paths start from. */
    @Test
    void firstDrawsOfSuccessiveAddressesAreUniform() {
        assertUniform(LongStream.range(0, 100_000)
                .map(trial ->
                        new TrialStreams(42, trial).open(Purpose.FADING, 0).nextLong())
                .toArray());
        assertUniform(LongStream.range(0, 100_000)
                .map(element -> STREAMS.open(Purpose.FADING, (int) element).nextLong())
                .toArray());
        assertUniform(LongStream.range(0, 100_000)
                .map(block -> STREAMS.openBlock(Purpose.FADING, 0, block).nextLong())
                .toArray());
    }

    /** Under independence the correlation of n pairs has standard error 1/sqrt(n); tolerance 4 of them. */
    @Test
    void successiveTrialsAreUncorrelated() {
        int pairs = 100_000;
        double sum = 0;
        for (int trial = 0; trial < pairs; trial++) {
            sum += firstUniform(trial) * firstUniform(trial + 1);
        }
        // The product of two centred uniforms has variance 1/144.
        assertEquals(0, sum / pairs, 4 / (12 * Math.sqrt(pairs)));
    }

    @Test
    void purposesHaveNumbersOfTheirOwn() {
        long numbers = Arrays.stream(Purpose.values())
                .mapToInt(Purpose::number)
                .distinct()
                .count();
        assertEquals(Purpose.values().length, numbers);
        assertTrue(Arrays.stream(Purpose.values()).allMatch(it -> it.number() >= 1));
    }

    @Test
    void negativeTrialsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new TrialStreams(42, -1));
    }

    private static double firstUniform(long trial) {
        return new TrialStreams(42, trial).open(Purpose.FADING, 0).nextDouble() - 0.5;
    }

    private static void assertKnownAnswer(long[] seed, long... answer) {
        assertArrayEquals(answer, draws(new Philox4x64(seed), answer.length));
    }

    private static void assertUniform(long[] draws) {
        long[] cells = new long[256];
        for (long draw : draws) {
            cells[(int) (draw >>> 56)]++;
        }
        double pValue = ChiSquareTest.withDefaults().test(cells).getPValue();
        assertTrue(pValue > 1e-4, "p = " + pValue);
    }

    private static long[] draws(UniformRandomProvider stream, int count) {
        return stream.longs(count).toArray();
    }
}
