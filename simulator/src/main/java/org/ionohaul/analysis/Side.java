package org.ionohaul.analysis;

import org.ionohaul.statistics.DiscordantPairs;

/** Which of two modes is ahead in something, beyond chance. */
public enum Side {
    /** The first, which is the best mode where the best is compared with the next. */
    FIRST,
    /** The second. */
    SECOND,
    /** Neither, beyond chance. */
    NEITHER;

    /** Returns the side that hit more often. */
    static Side of(DiscordantPairs pairs) {
        return pairs.first() == pairs.second() ? NEITHER : pairs.first() > pairs.second() ? FIRST : SECOND;
    }

    /** Returns the same seen from the other side. */
    Side swapped() {
        return switch (this) {
            case FIRST -> SECOND;
            case SECOND -> FIRST;
            case NEITHER -> NEITHER;
        };
    }
}
