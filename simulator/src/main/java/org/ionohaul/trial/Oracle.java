package org.ionohaul.trial;

/** What no real station can know: how well each data rate would do at an instant. Told to the {@link Yardstick} alone. */
@FunctionalInterface
interface Oracle {
    /**
     * Returns the payload that an over begun at the instant is expected to bring, in bytes a second of airtime.
     *
     * @param dataRate data rate, counted from 1
     * @param atNanos when the over begins, in nanoseconds since the trial began
     */
    double payloadBytesPerSecond(int dataRate, long atNanos);
}
