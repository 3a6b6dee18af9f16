package org.ionohaul.rendering;

import org.ionohaul.session.Ending;

/** Words for why a session ended. */
public final class EndingText {
    private EndingText() {}

    /** Returns the reason as part of a sentence, such as {@code hung up}. */
    public static String of(Ending ending) {
        return switch (ending) {
            case COMPLETED -> "hung up";
            case HANG_UP_UNANSWERED -> "hung up without an answer";
            case NOTHING_MORE_HEARD -> "has everything and hears nothing more";
            case NEVER_LINKED -> "no call was ever answered, redials used up";
            case NEVER_LINKED_OUT_OF_PATIENCE -> "the operator lost patience, no call was ever answered";
            case NEVER_LINKED_AT_HORIZON -> "still dialling at the horizon, no call was ever answered";
            case LINK_LOST -> "link lost, redials used up";
            case OUT_OF_PATIENCE -> "the operator lost patience";
            case AT_HORIZON -> "still running at the horizon";
        };
    }
}
