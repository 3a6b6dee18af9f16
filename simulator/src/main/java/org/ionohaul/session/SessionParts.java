package org.ionohaul.session;

import org.ionohaul.link.LinkParts;

/**
 * Everything that a session is made of.
 *
 * @param link the link it runs on
 * @param rules how it opens and closes a link
 * @param cargo what is to be moved
 * @param patienceNanos how long the operator of the station that dials waits before breaking off, in nanoseconds,
 *     positive; {@code Long.MAX_VALUE} for ever
 * @param trace who watches
 */
public record SessionParts(LinkParts link, SessionRules rules, Cargo cargo, long patienceNanos, SessionTrace trace) {
    /** Checks the patience. */
    public SessionParts {
        if (patienceNanos <= 0) {
            throw new IllegalArgumentException("patienceNanos must be positive: " + patienceNanos);
        }
    }
}
