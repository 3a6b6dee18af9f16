package org.ionohaul.random;

import java.util.Optional;
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
 * @param redraws which pieces of chance were drawn anew since; empty if the streams are not cut into pieces
 */
public record TrialStreams(long seed, long trial, Optional<Redraws> redraws) {
    private static final long OPENED = 0;
    private static final long SEEDS_BLOCK = 1;
    private static final long PICKED = 2;
    private static final long FIRST_PIECE = 3;

    /** Checks the trial's number. */
    public TrialStreams {
        if (trial < 0) {
            throw new IllegalArgumentException("trial must not be negative: " + trial);
        }
    }

    /** Returns the streams of a trial as they are first drawn. */
    public TrialStreams(long seed, long trial) {
        this(seed, trial, Optional.empty());
    }

    /**
     * Returns streams whose chance is cut into pieces that can be drawn anew one by one: blocks as they are, streams opened
     * from their beginning after every {@value PieceStream#DRAWS} draws. The pieces are independent, and as likely as the streams of any trial, but
     * not those of the trial of this number.
     */
    public TrialStreams inPieces() {
        return new TrialStreams(seed, trial, Optional.of(Redraws.NONE));
    }

    /**
     * Returns these streams with some of their pieces drawn anew, each picked by chance, whatever has been drawn.
     *
     * @param number a number of its own for this draw under this seed, zero or more
     * @param share chance that a piece is picked, above 0, at most 1
     * @throws java.util.NoSuchElementException unless the streams are cut into pieces
     */
    public TrialStreams redrawn(long number, double share) {
        return new TrialStreams(seed, trial, Optional.of(redraws.orElseThrow().then(number, share)));
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
        if (redraws.isPresent()) {
            return new PieceStream(piece -> addressed(purpose, element, repeat, FIRST_PIECE + piece));
        }
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
        // Nothing is made for streams that are not cut: they are opened often.
        long drawn = redraws.isPresent() ? lastDrawn(redraws.get(), key, block, use) : trial;
        return new Philox4x64(words(key, 0, use, block, drawn));
    }

    private long lastDrawn(Redraws draws, long key, long block, long use) {
        return draws.last((number, share) -> isPicked(number, share, key, block, use))
                .map(number -> ~number)
                .orElse(trial);
    }

    /** Returns whether a draw picks a piece, by a number of its own for each draw and piece. */
    private boolean isPicked(long number, double share, long key, long block, long use) {
        return new Philox4x64(words(key, use << Integer.SIZE, PICKED, block, ~number)).nextDouble() < share;
    }

    /** The generator takes its key first, then its counter from the lowest word. */
    private long[] words(long key, long lowest, long use, long block, long drawn) {
        return new long[] {seed, key, lowest, use, block, drawn};
    }
}
