package org.ionohaul.report;

import org.ionohaul.analysis.Limit;

/** What keeps a file from being through by a deadline, in words. */
final class LimitWords {
    private LimitWords() {}

    /** Returns it in a word or two, for a table. */
    static String word(Limit limit) {
        return switch (limit) {
            case TIME -> "time";
            case PATIENCE -> "patience";
            case LOST_LINKS -> "lost links";
            case NO_LINK -> "no link";
        };
    }

    /** Returns the sentence that follows a promise; empty where it is the deadline itself. */
    static String sentence(Limit limit) {
        return switch (limit) {
            case TIME -> "";
            case PATIENCE -> " What stops a larger one is not the deadline: an operator's patience runs out before.";
            case LOST_LINKS ->
                " What stops a larger one is not the deadline: the link is lost and all redials are used"
                        + " up before.";
            case NO_LINK -> " What stops a larger one is not the deadline: no call is answered.";
        };
    }
}
