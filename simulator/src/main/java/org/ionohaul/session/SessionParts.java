package org.ionohaul.session;

import java.util.function.Supplier;
import org.ionohaul.link.Ether;
import org.ionohaul.link.LinkParts;
import org.ionohaul.rate.RatePolicy;

/**
 * Everything that a session is made of.
 *
 * @param link the link it runs on
 * @param ether how its two stations hear each other: 0 dials, 1 is called
 * @param ratePolicies makes a fresh policy for each station that may send
 * @param rules how it opens and closes a link
 * @param cargo what is to be moved
 * @param patienceNanos how long the operator of the station that dials waits before breaking off, in nanoseconds,
 *     positive; {@code Long.MAX_VALUE} for ever
 * @param trace who watches
 */
public record SessionParts(
        LinkParts link,
        Ether ether,
        Supplier<RatePolicy> ratePolicies,
        SessionRules rules,
        Cargo cargo,
        long patienceNanos,
        SessionTrace trace) {
    /** Checks the patience. */
    public SessionParts {
        if (patienceNanos <= 0) {
            throw new IllegalArgumentException("patienceNanos must be positive: " + patienceNanos);
        }
    }
}
