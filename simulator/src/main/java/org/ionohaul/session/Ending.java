package org.ionohaul.session;

/**
 * Why a session ended for the station that dialled, as that station decided it; what had been achieved by then is its {@link
 * Outcome}.
 */
public enum Ending {
    /** All is through, and the two have hung up. */
    COMPLETED,
    /** All is through, but nobody answered the hang-up. */
    HANG_UP_UNANSWERED,
    /** It holds all that was asked for, and the other end, which had the word, fell silent. */
    NOTHING_MORE_HEARD,
    /** No call was ever answered, and all calls and redials are used up. */
    NEVER_LINKED,
    /** No call was ever answered, and the operator broke off. */
    NEVER_LINKED_OUT_OF_PATIENCE,
    /** No call was ever answered, and it was still dialling at the horizon. */
    NEVER_LINKED_AT_HORIZON,
    /** The link was lost, and the redials are used up. */
    LINK_LOST,
    /** It had a link, and the operator broke off. */
    OUT_OF_PATIENCE,
    /** It had a link, and was still at it at the horizon. */
    AT_HORIZON;

    /** Returns whether no call was ever answered. */
    public boolean isWithoutLink() {
        return this == NEVER_LINKED || this == NEVER_LINKED_OUT_OF_PATIENCE || this == NEVER_LINKED_AT_HORIZON;
    }

    /** Returns whether the session was still running at the horizon. */
    public boolean isAtHorizon() {
        return this == AT_HORIZON || this == NEVER_LINKED_AT_HORIZON;
    }
}
