package org.ionohaul.analysis;

import org.ionohaul.session.Ending;
import org.ionohaul.session.Outcome;
import org.ionohaul.study.TrialRow;

/** What keeps a file from being through by a deadline. */
public enum Limit {
    /** It was still being sent then. */
    DEADLINE,
    /** It was still being sent when watching ended, before the deadline or just then. */
    HORIZON,
    /** The operator of the station that dials had broken off. */
    PATIENCE,
    /** The link was lost, and the redials were used up. */
    LOST_LINKS,
    /** No call was ever answered. */
    NO_LINK,
    /** All had come over, but some of it wrong, and nobody noticed. */
    WRONG;

    /** Returns what kept a trial that was late. */
    static Limit of(TrialRow late, double deadlineSeconds) {
        if (late.endedNanos() / 1e9 > deadlineSeconds) {
            return DEADLINE;
        }
        if (late.outcome() == Outcome.DELIVERED_WRONG) {
            return WRONG;
        }
        return of(late.ending());
    }

    /** Returns what kept a session from delivering that ended for a reason before all was through. */
    static Limit of(Ending ending) {
        return switch (ending) {
            case OUT_OF_PATIENCE -> PATIENCE;
            case LINK_LOST -> LOST_LINKS;
            case NEVER_LINKED, NEVER_LINKED_OUT_OF_PATIENCE, NEVER_LINKED_AT_HORIZON -> NO_LINK;
            case AT_HORIZON -> HORIZON;
            case COMPLETED, HANG_UP_UNANSWERED, NOTHING_MORE_HEARD -> DEADLINE;
        };
    }
}
