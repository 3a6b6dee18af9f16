package org.ionohaul.session;

/** What a session had achieved when it ended; each trial has exactly one outcome. Why it ended is its {@link Ending}. */
public enum Outcome {
    /** Everything delivered, the sender knows it, and both ends hung up. */
    CLOSED,
    /** Everything delivered and the sender knows it, but an end never heard the hang-up. */
    CONFIRMED_NOT_CLOSED,
    /** The far side of the transfer holds everything, but the sender gave up before it knew. */
    DELIVERED_UNCONFIRMED,
    /**
     * The far side of the transfer holds everything, but some of it is wrong and no check noticed: nobody knows, and the
     * sender may well believe it through. So it is if a block is missing, at the end also, or there twice, because an answer
     * was taken for another.
     */
    DELIVERED_WRONG,
    /** The link was lost, or never made, and the station gave up with bytes missing. */
    GAVE_UP,
    /** Still running when the horizon came: what is missing is censored. */
    RUNNING
}
