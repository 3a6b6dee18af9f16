package org.ionohaul.session;

import java.util.Arrays;

/** What the receiver held at each instant: bytes that arrived in order, counted from the beginning of the transfer. */
public final class ProgressCurve {
    /** What {@link #reachedNanos} returns for a size that was never reached. */
    public static final long NEVER = Long.MAX_VALUE;

    private final long[] atNanos;
    private final long[] heldBytes;

    private ProgressCurve(long[] atNanos, long[] heldBytes) {
        this.atNanos = atNanos;
        this.heldBytes = heldBytes;
    }

    /**
     * Returns a curve.
     *
     * @param atNanos instants at which the count rose, in nanoseconds since the trial began, not falling; copied
     * @param heldBytes the count from that instant on, rising; same length; copied
     * @throws IllegalArgumentException if the lengths differ
     */
    public static ProgressCurve of(long[] atNanos, long[] heldBytes) {
        if (atNanos.length != heldBytes.length) {
            throw new IllegalArgumentException("lengths differ: " + atNanos.length + ", " + heldBytes.length);
        }
        return new ProgressCurve(atNanos.clone(), heldBytes.clone());
    }

    /** Returns how many times the count rose. */
    public int size() {
        return atNanos.length;
    }

    /** Returns the instant of a rise, in nanoseconds since the trial began; {@code index} below {@link #size()}. */
    public long atNanos(int index) {
        return atNanos[index];
    }

    /** Returns the bytes held from that rise on; {@code index} below {@link #size()}. */
    public long heldBytes(int index) {
        return heldBytes[index];
    }

    /** Returns when the receiver first held so many bytes, in nanoseconds since the trial began, or {@link #NEVER}. */
    public long reachedNanos(long bytes) {
        int found = Arrays.binarySearch(heldBytes, bytes);
        int index = found >= 0 ? found : -found - 1;
        return index < atNanos.length ? atNanos[index] : NEVER;
    }
}
