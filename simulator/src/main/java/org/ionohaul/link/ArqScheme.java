package org.ionohaul.link;

/** Which frames go out again after an acknowledgement. */
public enum ArqScheme {
    /** One frame an over; it is repeated until acknowledged. */
    STOP_AND_WAIT,
    /** Everything from the first missing frame on goes out again. */
    GO_BACK_N,
    /** Just the missing frames go out again. */
    SELECTIVE_REPEAT
}
