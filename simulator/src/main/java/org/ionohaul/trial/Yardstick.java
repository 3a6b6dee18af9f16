package org.ionohaul.trial;

import org.ionohaul.link.Timing;

/**
 * What each data rate would really bring at an instant, counted over whole cycles: what no station can know. It judges data
 * rates and makes the omniscient policy; no other policy is given it.
 *
 * @param timing how long the cycles of the link last
 * @param oracle what the sky lets through
 */
record Yardstick(Timing timing, Oracle oracle) {
    /**
     * Returns the payload expected of a data rate, in bytes a second, counted over the whole cycle of an over as long as it may
     * be at first.
     *
     * @param dataRate data rate, counted from 1
     * @param atNanos when the over begins, in nanoseconds since the trial began
     */
    double bytesPerSecond(int dataRate, long atNanos) {
        return oracle.payloadBytesPerSecond(dataRate, atNanos) * timing.overShare(dataRate);
    }

    /** Returns the data rate of which most is expected, the lowest of equals. */
    int best(long atNanos) {
        int best = 1;
        for (int dataRate = 2; dataRate <= timing.dataRateCount(); dataRate++) {
            if (bytesPerSecond(dataRate, atNanos) > bytesPerSecond(best, atNanos)) {
                best = dataRate;
            }
        }
        return best;
    }
}
