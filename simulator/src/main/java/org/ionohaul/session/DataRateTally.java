package org.ionohaul.session;

import java.util.List;
import java.util.stream.IntStream;

/** Counts what each data rate carried. */
final class DataRateTally {
    private final long[] airtimeNanos;
    private final int[] framesSent;
    private final int[] framesLost;

    DataRateTally(int dataRates) {
        airtimeNanos = new long[dataRates];
        framesSent = new int[dataRates];
        framesLost = new int[dataRates];
    }

    void count(int dataRate, long nanos, int sent, int lost) {
        airtimeNanos[dataRate - 1] += nanos;
        framesSent[dataRate - 1] += sent;
        framesLost[dataRate - 1] += lost;
    }

    List<DataRateUse> use() {
        return IntStream.range(0, airtimeNanos.length)
                .mapToObj(at -> new DataRateUse(airtimeNanos[at], framesSent[at], framesLost[at]))
                .toList();
    }
}
