package org.ionohaul.net;

/** One message on its way, from being written to being delivered or given up. */
public final class Letter {
    /** An instant that has not come. */
    public static final long NEVER = Long.MAX_VALUE;

    private final int number;
    private final int station;
    private final MessageKind kind;
    private final long bytes;
    private final long writtenNanos;
    private long missingBytes;
    private long begunNanos = NEVER;
    private long deliveredNanos = NEVER;
    private long givenUpNanos = NEVER;
    private int calls;

    Letter(int number, int station, MessageKind kind, long bytes, long writtenNanos) {
        this.number = number;
        this.station = station;
        this.kind = kind;
        this.bytes = bytes;
        this.writtenNanos = writtenNanos;
        missingBytes = bytes;
    }

    /** Returns its number in the trial, from 0 in order of writing. */
    public int number() {
        return number;
    }

    /** Returns the station that wrote it or for which it was written, from 1 on. */
    public int station() {
        return station;
    }

    /** Returns what kind of message it is. */
    public MessageKind kind() {
        return kind;
    }

    /** Returns how long it is, in bytes. */
    public long bytes() {
        return bytes;
    }

    /** Returns how much of it the other end does not hold, in bytes. */
    public long missingBytes() {
        return missingBytes;
    }

    /** Returns when it was written, in nanoseconds since the trial began. */
    public long writtenNanos() {
        return writtenNanos;
    }

    /** Returns when the conversation began, or the call that got through, in which it was handed over; or {@link #NEVER}. */
    public long begunNanos() {
        return begunNanos;
    }

    /** Returns when it was delivered, or {@link #NEVER}. */
    public long deliveredNanos() {
        return deliveredNanos;
    }

    /** Returns when it was given up, or {@link #NEVER}. */
    public long givenUpNanos() {
        return givenUpNanos;
    }

    /** Returns in how many conversations it was to be handed over. */
    public int calls() {
        return calls;
    }

    boolean isDelivered() {
        return deliveredNanos < NEVER;
    }

    void called() {
        calls++;
    }

    /** It is its turn; what counts is the last time. */
    void begin(long nowNanos) {
        if (!isDelivered()) {
            begunNanos = nowNanos;
        }
    }

    void deliver(long nowNanos) {
        deliveredNanos = nowNanos;
        missingBytes = 0;
    }

    void giveUp(long nowNanos) {
        givenUpNanos = nowNanos;
    }

    /** The other end holds so many bytes more of it; the last one comes by delivery only. */
    void hold(long moreBytes) {
        missingBytes = Math.max(1, missingBytes - moreBytes);
    }
}
