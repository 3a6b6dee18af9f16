package org.ionohaul.random;

import java.util.function.LongFunction;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.LongProvider;

/** A stream that goes on with another one after every few draws. */
final class PieceStream extends LongProvider {
    /** How many draws a piece has: few, so that a piece drawn anew changes little. */
    static final int DRAWS = 4;

    private final LongFunction<UniformRandomProvider> pieces;
    private UniformRandomProvider piece;
    private long draws;

    /**
     * Begins with the first piece.
     *
     * @param pieces opens a piece, from number 0 on
     */
    PieceStream(LongFunction<UniformRandomProvider> pieces) {
        this.pieces = pieces;
        this.piece = pieces.apply(0);
    }

    @Override
    public long next() {
        if (draws > 0 && draws % DRAWS == 0) {
            piece = pieces.apply(draws / DRAWS);
        }
        draws++;
        return piece.nextLong();
    }
}
