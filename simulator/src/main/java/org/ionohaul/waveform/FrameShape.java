package org.ionohaul.waveform;

/** How a frame is put on the air and what decides whether it is decoded: modelled, or measured. */
public sealed interface FrameShape permits ModelledFrame, MeasuredFrame {
    /** Returns the user bytes a frame carries, zero or more (0 for control bursts that carry none). */
    int payloadBytes();

    /** Returns how long one frame is on the air, in seconds, interleaver fill not counted; positive. */
    double airtimeSeconds();

    /** Returns by how much the sender's frequency may lie off before anything is lost, in Hz. */
    double frequencyToleranceHz();

    /**
     * Returns the time over which a frame's bits are spread, in seconds, zero for just the frame's own airtime; a burst
     * is filled up to a whole number of interleavers.
     */
    double interleaverSeconds();
}
