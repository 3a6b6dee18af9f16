package org.ionohaul.waveform;

/** How a receiver finds out that a frame is wrong. */
public enum FrameCheck {
    /** By a check sum over the whole frame, good enough that errors it overlooks need no counting. */
    WHOLE_FRAME,
    /**
     * By each character's seven elements, of which four must be of one kind (ITU-R M.476, M.625): pairs of opposite
     * errors pass unnoticed, and the frame is then delivered with a wrong character.
     */
    FOUR_OF_SEVEN
}
