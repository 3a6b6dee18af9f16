package org.ionohaul.link;

/** Which frames go out again after an acknowledgement. */
public enum ArqScheme {
    /** One frame an over; it is repeated until acknowledged. */
    STOP_AND_WAIT,
    /**
     * One numbered frame an over, and one of two words as its answer, go on or repeat, also where nothing was decoded. A word
     * taken for the other is acted upon: a frame that comes twice is known by its number, one that follows a missing one is
     * refused.
     */
    ASKED_REPEAT,
    /**
     * One frame an over without a number, and one of two control signals as the answer to each over and poll: each stands for
     * every other frame, and asks for it (ITU-R M.476, M.625). Whoever asks for the frame that was just sent has it repeated. A
     * control signal taken for the other is acted upon: a frame is taken in anew, or never.
     */
    ALTERNATING,
    /** Everything from the first missing frame on goes out again. */
    GO_BACK_N,
    /** Just the missing frames go out again. */
    SELECTIVE_REPEAT;

    /** Returns whether an over carries one frame. */
    boolean isOneByOne() {
        return this == STOP_AND_WAIT || answersEach();
    }

    /** Returns whether an answer is one of two words, which comes whatever was decoded. */
    public boolean answersEach() {
        return this == ASKED_REPEAT || this == ALTERNATING;
    }
}
