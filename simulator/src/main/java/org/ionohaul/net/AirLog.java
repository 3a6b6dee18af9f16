package org.ionohaul.net;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ionohaul.engine.Engine;

/** Who was on the air on one channel when: what listeners remember, and what it adds up to. */
final class AirLog {
    /** What a log adds up to over the time that counts, in nanoseconds. */
    record Sums(long occupiedNanos, long collidedNanos, long toBusyGatewayNanos) {}

    private final Engine engine;
    private final int channel;
    private final NetEther ether;
    private final long fromNanos;
    private final long untilNanos;
    private final boolean keepsAll;
    private final long[] startNanos;
    private final long[] endNanos;
    private final List<AirSpan> spans = new ArrayList<>();
    private long occupiedNanos;
    private long collidedNanos;
    private long toBusyGatewayNanos;
    private long sinceNanos;
    private int onAir;

    /**
     * Opens a log.
     *
     * @param fromNanos from when on it counts
     * @param untilNanos until when
     * @param keepsAll whether it keeps every burst, for a picture
     */
    AirLog(Engine engine, int channel, NetEther ether, long fromNanos, long untilNanos, boolean keepsAll) {
        this.engine = engine;
        this.channel = channel;
        this.ether = ether;
        this.fromNanos = fromNanos;
        this.untilNanos = untilNanos;
        this.keepsAll = keepsAll;
        startNanos = new long[ether.audibility().stations()];
        endNanos = new long[startNanos.length];
        Arrays.fill(startNanos, Long.MIN_VALUE / 2);
        Arrays.fill(endNanos, Long.MIN_VALUE / 2);
    }

    /**
     * A burst leaves.
     *
     * @param isToBusyGateway whether it calls a gateway that works another station
     */
    void onSent(int from, int to, long durationNanos, boolean isToBusyGateway) {
        long nowNanos = engine.nowNanos();
        startNanos[from] = nowNanos;
        endNanos[from] = nowNanos + durationNanos;
        advance();
        onAir++;
        engine.schedule(durationNanos, () -> {
            advance();
            onAir--;
        });
        if (isToBusyGateway) {
            toBusyGatewayNanos += counted(nowNanos, nowNanos + durationNanos);
        }
        if (keepsAll) {
            spans.add(new AirSpan(channel, from, to, nowNanos, nowNanos + durationNanos, isToBusyGateway));
        }
    }

    /** Returns whether a station has heard any other since an instant. */
    boolean wasHeard(int at, long sinceInstantNanos) {
        long nowNanos = engine.nowNanos();
        for (int from = 0; from < startNanos.length; from++) {
            long wayNanos = from == at ? 0 : ether.propagationNanos(from, at);
            if (endNanos[from] + wayNanos > sinceInstantNanos
                    && startNanos[from] + wayNanos <= nowNanos
                    && ether.isAudible(from, at, nowNanos)) {
                return true;
            }
        }
        return false;
    }

    private void advance() {
        long nowNanos = engine.nowNanos();
        occupiedNanos += onAir >= 1 ? counted(sinceNanos, nowNanos) : 0;
        collidedNanos += onAir >= 2 ? counted(sinceNanos, nowNanos) : 0;
        sinceNanos = nowNanos;
    }

    private long counted(long from, long until) {
        return Math.max(0, Math.min(until, untilNanos) - Math.max(from, fromNanos));
    }

    Sums sums() {
        advance();
        return new Sums(occupiedNanos, collidedNanos, toBusyGatewayNanos);
    }

    List<AirSpan> spans() {
        return spans;
    }
}
