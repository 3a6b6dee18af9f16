package org.ionohaul.waveform;

/** How a receiver finds out that a frame is wrong. */
public enum FrameCheck {
    /** By a check sum over the whole frame, good enough that errors it overlooks need no counting. */
    WHOLE_FRAME(0),
    /** By a cyclic redundancy check of 16 bits over the whole frame, such as the frame check sequence of AX.25 v2.2. */
    CRC_16(0x1p-16),
    /** By one of 24 bits. */
    CRC_24(0x1p-24),
    /** By one of 32 bits, such as that of STANAG 5066 Annex C. */
    CRC_32(0x1p-32),
    /**
     * By each character's seven elements, of which four must be of one kind (ITU-R M.476, M.625): pairs of opposite
     * errors pass unnoticed, and the frame is then delivered with a wrong character.
     */
    FOUR_OF_SEVEN(0),
    /**
     * By being one of the control signals of ITU-R M.625, one character of which any two differ in four elements (from memory):
     * one that becomes the other of the two that answer blocks is taken for it; what becomes another one, or none, is not
     * understood.
     */
    CONTROL_SIGNAL(0),
    /**
     * Not at all: one of four words of two bits. Which of the words mean what in STANAG 4538 is not remembered; of three wrong
     * ones one is assumed to be the opposite answer, the others to be none.
     */
    ONE_OF_FOUR(1.0 / 3);

    private final double passedShare;

    FrameCheck(double passedShare) {
        this.passedShare = passedShare;
    }

    /**
     * Returns which share of wrong frames a check sum passes: of the 2^n sums that a frame full of errors may have by
     * chance one is right (W. W. Peterson and D. T. Brown, Proc. IRE 49(1), 1961, on bursts longer than the sum). Zero
     * where there is no sum, or none whose failures are counted.
     */
    double passedShare() {
        return passedShare;
    }
}
