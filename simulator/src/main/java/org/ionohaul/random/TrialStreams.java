package org.ionohaul.random;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.Philox4x64;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;

/**
 * The random streams of one trial, each found by its address (seed, trial, purpose, element, block) and by nothing else.
 *
 * <p>Streams are addressed, never allocated: which streams were opened before, by whom and on which thread changes no
 * number. The generator is the counter-based Philox 4x64 of Salmon et al., "Parallel random numbers: as easy as 1, 2,
 * 3" (SC'11): its key is (seed, purpose and element); the highest word of its counter is the trial and the next one the
 * block. The second lowest tells streams that are opened from those that only seed a block, so streams with different
 * addresses share no state for 2^66 draws.
 *
 * @param seed the study's seed
 * @param trial the trial's number, zero or more
 */
public record TrialStreams(long seed, long trial) {
    private static final long OPENED = 0;
    private static final long SEEDS_BLOCK = 1;

    /** Checks the trial's number. */
    public TrialStreams {
        if (trial < 0) {
            throw new IllegalArgumentException("trial must not be negative: " + trial);
        }
    }

    /** Returns the stream of a purpose and element, from its beginning; equal addresses give equal streams. */
    public UniformRandomProvider open(Purpose purpose, int element) {
        return open(purpose, element, 0);
    }

    /**
     * Returns one of several streams of a purpose and element, from its beginning; equal addresses give equal streams.
     *
     * @param repeat which of them; number 0 is what {@link #open(Purpose, int)} returns
     */
    public UniformRandomProvider open(Purpose purpose, int element, long repeat) {
        return addressed(purpose, element, repeat, OPENED);
    }

    /**
     * Returns a fast stream for bulk draws of one block, seeded from the addressed one, so that a long sequence can be
     * entered at any block in any order. That two such streams do not overlap rests on the 256-bit state, not on proof.
     *
     * @param block the block's number; any value
     */
    public UniformRandomProvider openBlock(Purpose purpose, int element, long block) {
        Philox4x64 source = addressed(purpose, element, block, SEEDS_BLOCK);
        return new XoShiRo256PlusPlus(source.nextLong(), source.nextLong(), source.nextLong(), source.nextLong());
    }

    private Philox4x64 addressed(Purpose purpose, int element, long block, long use) {
        long key = ((long) purpose.number() << Integer.SIZE) | Integer.toUnsignedLong(element);
        // The generator takes its key first, then its counter from the lowest word.
        return new Philox4x64(new long[] {seed, key, 0, use, block, trial});
    }
}
