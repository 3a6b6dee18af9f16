package org.ionohaul.study;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * The file sizes at which progress is kept: the preferred numbers of ISO 3, series R20, from 1 kB to 1 MB, twenty a decade.
 *
 * <p>A fixed grid, so that rows stay small and those of different studies can be compared.
 */
public final class SizeGrid {
    private static final long[] R20 = {
        1000, 1120, 1250, 1400, 1600, 1800, 2000, 2240, 2500, 2800, 3150, 3550, 4000, 4500, 5000, 5600, 6300, 7100,
        8000, 9000
    };
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
        return LongStream.of(R20).map(size -> size * factor);
    }
}
