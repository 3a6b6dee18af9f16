package org.ionohaul.link;

import java.util.Arrays;

/**
 * Who has been on the air lately, from when until when, at the sender's own place: enough to tell what else each burst still on
 * its way has met. Readers must not keep it beyond a call. Nothing is allocated once the arrays have grown.
 */
public final class Transmissions {
    private int[] senders = new int[8];
    private int[] receivers = new int[8];
    private long[] starts = new long[8];
    private long[] ends = new long[8];
    private int size;

    Transmissions() {}

    /** Returns how many there are, in the order in which they began. */
    public int size() {
        return size;
    }

    /** Returns the number of the station that sent one. */
    public int sender(int at) {
        return senders[at];
    }

    /** Returns the number of the station that one is meant for. */
    public int receiver(int at) {
        return receivers[at];
    }

    /** Returns when its first symbol left, in nanoseconds since the trial began. */
    public long startNanos(int at) {
        return starts[at];
    }

    /** Returns when its last symbol has left. */
    public long endNanos(int at) {
        return ends[at];
    }

    void begin(int sender, int receiver, long startNanos, long endNanos) {
        if (size == senders.length) {
            senders = Arrays.copyOf(senders, 2 * size);
            receivers = Arrays.copyOf(receivers, 2 * size);
            starts = Arrays.copyOf(starts, 2 * size);
            ends = Arrays.copyOf(ends, 2 * size);
        }
        put(size++, sender, receiver, startNanos, endNanos);
    }

    /**
     * Forgets what can matter no more: what had passed everywhere before the first burst still on its way left.
     *
     * @param longestWayNanos how long a signal travels at most
     */
    void forgetWhatHasPassed(long nowNanos, long longestWayNanos) {
        long oldest = nowNanos;
        for (int at = 0; at < size; at++) {
            if (ends[at] + longestWayNanos >= nowNanos) {
                oldest = Math.min(oldest, starts[at]);
            }
        }
        int kept = 0;
        for (int at = 0; at < size; at++) {
            if (ends[at] + longestWayNanos >= oldest) {
                put(kept++, senders[at], receivers[at], starts[at], ends[at]);
            }
        }
        size = kept;
    }

    private void put(int at, int sender, int receiver, long startNanos, long endNanos) {
        senders[at] = sender;
        receivers[at] = receiver;
        starts[at] = startNanos;
        ends[at] = endNanos;
    }
}
