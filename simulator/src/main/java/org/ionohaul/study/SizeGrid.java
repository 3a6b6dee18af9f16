package org.ionohaul.study;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * The file sizes at which progress is kept: the preferred numbers of ISO 3, series R10, from 1 kB to 1 MB, ten a decade.
 *
 * <p>A fixed grid, so that rows stay small and those of different studies can be compared.
 */
public final class SizeGrid {
    private static final long[] R10 = {1000, 1250, 1600, 2000, 2500, 3150, 4000, 5000, 6300, 8000};
    private static final int DECADES = 3;

    /** The sizes in bytes, rising. */
    public static final List<Long> BYTES = LongStream.concat(
                    IntStream.range(0, DECADES).boxed().flatMapToLong(SizeGrid::decade), LongStream.of(1_000_000))
            .boxed()
            .toList();

    private SizeGrid() {}

    /** Returns how many of the sizes are at most so many bytes. */
    public static int countUpTo(long bytes) {
        return (int) BYTES.stream().filter(size -> size <= bytes).count();
    }

    /** Returns the index of the smallest of the sizes that is not below so many bytes; their number if none is. */
    public static int indexNotBelow(long bytes) {
        return (int) BYTES.stream().filter(size -> size < bytes).count();
    }

    private static LongStream decade(int decade) {
        long factor = Math.round(Math.pow(10, decade));
        return LongStream.of(R10).map(size -> size * factor);
    }
}
