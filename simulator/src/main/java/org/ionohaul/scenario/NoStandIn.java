package org.ionohaul.scenario;

import org.ionohaul.limits.OutOfRange;

/**
 * Thrown when not even the examples of a section's keys make a record, as where they don't go with another section that is
 * wrong itself. Reading ends there; the problem that led to it has been noted.
 */
final class NoStandIn extends RuntimeException {
    private static final long serialVersionUID = 1;

    NoStandIn(String section, OutOfRange refusal) {
        super("nothing can stand in for [" + section + "]", refusal);
    }
}
