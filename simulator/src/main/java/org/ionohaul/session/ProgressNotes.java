package org.ionohaul.session;

import java.util.Arrays;

/** Notes how many bytes the receiver held at best, and since when. */
final class ProgressNotes {
    private long[] atNanos = new long[32];
    private long[] heldBytes = new long[32];
    private int size;

    /** Notes the bytes held in order, if they are more than ever before; returns whether they are. */
    boolean note(long bytes, long nowNanos) {
        boolean isMore = size == 0 ? bytes > 0 : bytes > heldBytes[size - 1];
        if (isMore) {
            append(bytes, nowNanos);
        }
        return isMore;
    }

    private void append(long bytes, long nowNanos) {
        if (size == atNanos.length) {
            atNanos = Arrays.copyOf(atNanos, 2 * size);
            heldBytes = Arrays.copyOf(heldBytes, 2 * size);
        }
        atNanos[size] = nowNanos;
        heldBytes[size] = bytes;
        size++;
    }

    ProgressCurve curve() {
        return ProgressCurve.of(Arrays.copyOf(atNanos, size), Arrays.copyOf(heldBytes, size));
    }
}
