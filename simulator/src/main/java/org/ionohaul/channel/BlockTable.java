package org.ionohaul.channel;

import java.util.function.LongFunction;
import org.jspecify.annotations.Nullable;

/**
 * Keeps the blocks of a long random sequence that were asked for lately, and makes the others again when they are asked
 * for. A block depends on its number alone, so what was forgotten changes cost and never a value.
 *
 * @param <T> what a block holds
 */
final class BlockTable<T> {
    private final LongFunction<T> maker;
    private final @Nullable Block<T>[] kept;

    /**
     * Prepares an empty table.
     *
     * @param capacity how many blocks are kept, a power of two: block n takes the place of n plus or minus that many
     * @param maker makes the block of a number
     */
    @SuppressWarnings("unchecked")
    BlockTable(int capacity, LongFunction<T> maker) {
        this.maker = maker;
        this.kept = (Block<T>[]) new Block<?>[capacity];
    }

    T get(long number) {
        int place = (int) number & (kept.length - 1);
        Block<T> block = kept[place];
        if (block == null || block.number != number) {
            block = new Block<>(number, maker.apply(number));
            kept[place] = block;
        }
        return block.content;
    }

    private record Block<T>(long number, T content) {}
}
