package org.ionohaul.link;

/** What no real station can know: how well each data rate would do at an instant. Wired for the yardstick alone. */
@FunctionalInterface
public interface Oracle {
    /** Knows nothing: every data rate looks equally good. */
    Oracle SILENT = (dataRate, atNanos) -> 0;

    /**
     * Returns the payload that an over begun at the instant is expected to bring, in bytes a second of airtime.
     *
     * @param dataRate data rate, counted from 1
     * @param atNanos when the over begins, in nanoseconds since the trial began
     */
    double payloadBytesPerSecond(int dataRate, long atNanos);
}
