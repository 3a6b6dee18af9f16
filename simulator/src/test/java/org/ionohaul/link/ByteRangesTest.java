package org.ionohaul.link;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import org.apache.commons.rng.UniformRandomProvider;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;

final class ByteRangesTest {
    @Test
    void holdsWhatASetOfBitsHoldsAfterAnyAdditions() {
        UniformRandomProvider random = new TrialStreams(1, 0).open(Purpose.POLICY, 0);
        for (int round = 0; round < 200; round++) {
            ByteRanges ranges = new ByteRanges();
            BitSet bits = new BitSet();
            for (int step = 0; step < 40; step++) {
                int start = random.nextInt(200);
                int end = start + random.nextInt(20);
                int before = bits.cardinality();
                bits.set(start, end);
                assertEquals(bits.cardinality() - before, ranges.add(start, end));
                assertSame(bits, ranges, random.nextInt(220));
            }
            ByteRanges copy = new ByteRanges();
            copy.copyFrom(ranges);
            assertSame(bits, copy, 0);
        }
    }

    private static void assertSame(BitSet bits, ByteRanges ranges, int from) {
        int missing = bits.nextClearBit(from);
        int next = bits.nextSetBit(missing);
        assertEquals(bits.nextClearBit(0), ranges.prefixEnd());
        assertEquals(missing, ranges.firstMissing(from));
        assertEquals(next < 0 ? 1000 : next, ranges.missingEnd(missing, 1000));
        assertEquals(bits.nextClearBit(from) >= from + 3, ranges.contains(from, from + 3));
    }

    @Test
    void aPrefixReplacesWhatWasHeld() {
        ByteRanges ranges = new ByteRanges();
        ranges.add(50, 60);
        ranges.setPrefix(10);
        assertEquals(10, ranges.prefixEnd());
        assertEquals(1000, ranges.missingEnd(10, 1000));
        ranges.clear();
        assertTrue(ranges.contains(0, 0));
        assertEquals(0, ranges.prefixEnd());
    }
}
