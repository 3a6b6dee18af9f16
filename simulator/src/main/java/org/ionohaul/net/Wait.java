package org.ionohaul.net;

import org.ionohaul.limits.OutOfRange;

/**
 * A wait of any length in a range, each as likely.
 *
 * @param shortestNanos zero or more
 * @param longestNanos no less
 */
public record Wait(long shortestNanos, long longestNanos) {
    /** Checks both ends. */
    public Wait {
        OutOfRange.unless(shortestNanos >= 0, "shortestNanos", "must not be negative", shortestNanos);
        OutOfRange.unless(
                longestNanos >= shortestNanos, "longestNanos", "must not be below the shortest", longestNanos);
    }

    /**
     * Returns a wait, in nanoseconds.
     *
     * @param share how far it is from the shortest to the longest, from 0 to below 1
     */
    long at(double share) {
        return shortestNanos + Math.round(share * (longestNanos - shortestNanos));
    }
}
