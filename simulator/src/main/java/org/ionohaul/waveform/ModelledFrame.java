package org.ionohaul.waveform;

import org.ionohaul.limits.OutOfRange;

/**
 * A frame that is decoded or not by the laws of its modulation and code.
 *
 * @param coding how its bits become symbols
 * @param receiver in what the real receiver differs from an ideal one
 * @param payloadBytes user bytes, zero or more
 * @param informationBits bits on the air before coding, payload, header and check included, 1 or more
 * @param check how the receiver finds out that it is wrong
 * @param airtimeSeconds how long it is on the air, positive
 * @param interleaverSeconds time over which its bits are spread, zero for just its own airtime
 */
public record ModelledFrame(
        Coding coding,
        Receiver receiver,
        int payloadBytes,
        int informationBits,
        FrameCheck check,
        double airtimeSeconds,
        double interleaverSeconds)
        implements FrameShape {
    /** Checks every value. */
    public ModelledFrame {
        FrameLimits.require(payloadBytes, airtimeSeconds, interleaverSeconds);
        OutOfRange.unless(informationBits >= 1, "informationBits", "must be at least 1", informationBits);
        OutOfRange.unless(
                check != FrameCheck.FOUR_OF_SEVEN || (coding.isUncoded() && informationBits % 7 == 0),
                "informationBits",
                "must be uncoded characters of seven",
                informationBits);
        OutOfRange.unless(
                check != FrameCheck.CONTROL_SIGNAL || (coding.isUncoded() && informationBits == 7),
                "informationBits",
                "must be 7 for a control signal, uncoded",
                informationBits);
        OutOfRange.unless(
                check != FrameCheck.ONE_OF_FOUR || informationBits == 2,
                "informationBits",
                "must be 2 for one of four words",
                informationBits);
    }

    @Override
    public double frequencyToleranceHz() {
        return receiver.frequencyToleranceHz();
    }

    /**
     * Returns a frame of whole bytes under one check sum, whose airtime follows from its coding.
     *
     * @param knownShare share of the airtime that carries no data, from 0 to below 1
     * @param overheadBytes header and check bytes, zero or more
     */
    public static ModelledFrame ofBytes(
            Coding coding,
            Receiver receiver,
            double knownShare,
            int payloadBytes,
            int overheadBytes,
            double interleaverSeconds) {
        OutOfRange.unless(overheadBytes >= 0, "overheadBytes", "must not be negative", overheadBytes);
        OutOfRange.unless(
                payloadBytes + overheadBytes > 0, "payloadBytes", "must not be 0 without overhead", payloadBytes);
        int bits = 8 * (payloadBytes + overheadBytes);
        double airtime = coding.airtimeSeconds(bits, knownShare, interleaverSeconds);
        return new ModelledFrame(
                coding, receiver, payloadBytes, bits, FrameCheck.WHOLE_FRAME, airtime, interleaverSeconds);
    }
}
