package org.ionohaul.link;

import java.util.Arrays;

/**
 * A set of bytes of one file, kept as rising ranges that neither touch nor overlap.
 *
 * <p>Frames are counted in bytes and not in numbers, because the frames of two data rates differ in size: what is
 * held can then be compared whatever the data rate it came at, and a byte that comes twice is seen to be there already.
 * Nothing is allocated once the arrays have grown.
 */
final class ByteRanges {
    private long[] starts = new long[8];
    private long[] ends = new long[8];
    private int size;

    void clear() {
        size = 0;
    }

    void copyFrom(ByteRanges other) {
        ensureCapacity(other.size);
        System.arraycopy(other.starts, 0, starts, 0, other.size);
        System.arraycopy(other.ends, 0, ends, 0, other.size);
        size = other.size;
    }

    /** Keeps the bytes from 0 to below the limit, and no others. */
    void setPrefix(long end) {
        size = 0;
        add(0, end);
    }

    /** Adds the bytes from start to below end and returns how many of them are new. */
    long add(long start, long end) {
        if (start >= end) {
            return 0;
        }
        int first = firstEndingAtOrAfter(start);
        int after = first;
        long mergedStart = start;
        long mergedEnd = end;
        long known = 0;
        while (after < size && starts[after] <= end) {
            known += overlap(after, start, end);
            mergedStart = Math.min(mergedStart, starts[after]);
            mergedEnd = Math.max(mergedEnd, ends[after]);
            after++;
        }
        replace(first, after, mergedStart, mergedEnd);
        return end - start - known;
    }

    /** Returns whether all bytes from start to below end are in the set. */
    boolean contains(long start, long end) {
        return firstMissing(start) >= end;
    }

    /** Returns the end of the unbroken run that begins at byte 0. */
    long prefixEnd() {
        return firstMissing(0);
    }

    /** Returns the first byte at or after the given one that is not in the set. */
    long firstMissing(long from) {
        int at = firstEndingAtOrAfter(from);
        return at < size && starts[at] <= from ? ends[at] : from;
    }

    /** Returns the first byte after a missing one that is in the set, or the limit if none comes before it. */
    long missingEnd(long missing, long limit) {
        int at = firstEndingAtOrAfter(missing);
        if (at < size && starts[at] <= missing) {
            at++;
        }
        return at < size ? Math.min(starts[at], limit) : limit;
    }

    private int firstEndingAtOrAfter(long position) {
        int found = Arrays.binarySearch(ends, 0, size, position);
        return found >= 0 ? found : -found - 1;
    }

    private long overlap(int at, long start, long end) {
        return Math.max(0, Math.min(ends[at], end) - Math.max(starts[at], start));
    }

    private void replace(int first, int after, long start, long end) {
        int shift = first + 1 - after;
        ensureCapacity(size + shift);
        System.arraycopy(starts, after, starts, first + 1, size - after);
        System.arraycopy(ends, after, ends, first + 1, size - after);
        starts[first] = start;
        ends[first] = end;
        size += shift;
    }

    private void ensureCapacity(int needed) {
        if (needed > starts.length) {
            int capacity = Math.max(needed, 2 * starts.length);
            starts = Arrays.copyOf(starts, capacity);
            ends = Arrays.copyOf(ends, capacity);
        }
    }
}
