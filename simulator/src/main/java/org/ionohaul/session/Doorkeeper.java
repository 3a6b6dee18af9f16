package org.ionohaul.session;

import org.ionohaul.link.Message;

/** Says what a station that is called does about callers; one that serves several stations has one for each. */
public interface Doorkeeper {
    /** A station that has nothing else to do. */
    Doorkeeper ALWAYS_OPEN = message -> true;

    /**
     * Returns whether the station minds what it has just heard of its caller: false if it is busy with another one.
     *
     * @param message what was heard
     */
    boolean admits(Message message);

    /**
     * Returns how long it holds a link on which it hears nothing, in nanoseconds, positive.
     *
     * @param usualNanos what the mode's own rules come to
     */
    default long idleNanos(long usualNanos) {
        return usualNanos;
    }
}
