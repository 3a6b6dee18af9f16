package org.ionohaul.session;

import java.util.List;
import java.util.stream.IntStream;

/** Counts what each speed level carried. */
final class LevelTally {
    private final long[] airtimeNanos;
    private final int[] framesSent;
    private final int[] framesLost;

    LevelTally(int levels) {
        airtimeNanos = new long[levels];
        framesSent = new int[levels];
        framesLost = new int[levels];
    }

    void count(int level, long nanos, int sent, int lost) {
        airtimeNanos[level - 1] += nanos;
        framesSent[level - 1] += sent;
        framesLost[level - 1] += lost;
    }

    List<LevelUse> use() {
        return IntStream.range(0, airtimeNanos.length)
                .mapToObj(at -> new LevelUse(airtimeNanos[at], framesSent[at], framesLost[at]))
                .toList();
    }
}
