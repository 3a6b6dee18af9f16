package org.ionohaul.waveform;

import org.ionohaul.limits.OutOfRange;

/** The ranges of what every frame has. */
final class FrameLimits {
    /** Each block of an interleaver that a frame reaches through is looked at by itself. */
    private static final double MOST_BLOCKS = 200;

    private static final double LONGEST_SECONDS = 3600;

    private FrameLimits() {}

    static void require(int payloadBytes, double airtimeSeconds, double interleaverSeconds) {
        OutOfRange.unless(payloadBytes >= 0, "payloadBytes", "must not be negative", payloadBytes);
        OutOfRange.unless(
                airtimeSeconds > 0 && airtimeSeconds <= LONGEST_SECONDS,
                "airtimeSeconds",
                "must be above 0 and at most 1 h",
                airtimeSeconds);
        OutOfRange.unless(
                interleaverSeconds >= 0 && interleaverSeconds <= LONGEST_SECONDS,
                "interleaverSeconds",
                "must be from 0 to 1 h",
                interleaverSeconds);
        OutOfRange.unless(
                interleaverSeconds == 0 || airtimeSeconds <= MOST_BLOCKS * interleaverSeconds,
                "interleaverSeconds",
                "must be 0 or at least a 200th of airtimeSeconds",
                interleaverSeconds);
    }
}
