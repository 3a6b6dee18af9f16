package org.ionohaul.waveform;

import org.ionohaul.limits.OutOfRange;

/** The ranges of what every frame has. */
final class FrameLimits {
    private FrameLimits() {}

    static void require(int payloadBytes, double airtimeSeconds, double interleaverSeconds) {
        OutOfRange.unless(payloadBytes >= 0, "payloadBytes", "must not be negative", payloadBytes);
        OutOfRange.unless(
                airtimeSeconds > 0 && airtimeSeconds < 1e5, "airtimeSeconds", "must be positive", airtimeSeconds);
        OutOfRange.unless(
                interleaverSeconds >= 0 && interleaverSeconds < 1e5,
                "interleaverSeconds",
                "must not be negative",
                interleaverSeconds);
    }
}
