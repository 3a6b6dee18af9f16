package org.ionohaul.fieldlog;

/** What a logged run came to, as its operator wrote it down. */
public enum LoggedOutcome {
    /** The receiver holds everything, and both have hung up. */
    DELIVERED,
    /** The receiver holds everything, but the session never closed: a hang-up went unheard, or somebody pulled the plug. */
    DELIVERED_NOT_CLOSED,
    /** An operator ended the session before everything was through; it might have got there later. */
    BROKEN_OFF,
    /** The stations gave up by themselves with bytes missing: no answer, or the link lost for good. */
    GAVE_UP;

    /** Returns whether the receiver holds everything. */
    public boolean isDelivered() {
        return this == DELIVERED || this == DELIVERED_NOT_CLOSED;
    }
}
