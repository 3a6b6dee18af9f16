package org.ionohaul.waveform;

/** Refuses values out of range, in the words that a reader of files looks for: name, limit, value. */
final class Limits {
    private Limits() {}

    /** Throws unless the claim holds; a comparison with NaN never does. */
    static void require(boolean holds, String message, double value) {
        if (!holds) {
            throw new IllegalArgumentException(message + ": " + value);
        }
    }

    /** Checks what every frame has. */
    static void requireFrame(int payloadBytes, double airtimeSeconds, double interleaverSeconds) {
        require(payloadBytes >= 0, "payloadBytes must not be negative", payloadBytes);
        require(airtimeSeconds > 0 && airtimeSeconds < 1e5, "airtimeSeconds must be positive", airtimeSeconds);
        require(
                interleaverSeconds >= 0 && interleaverSeconds < 1e5,
                "interleaverSeconds must not be negative",
                interleaverSeconds);
    }
}
