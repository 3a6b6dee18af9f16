package org.ionohaul.net;

import java.util.OptionalInt;
import org.ionohaul.limits.OutOfRange;

/**
 * How those who call go about it, people or automatic stations.
 *
 * @param listensNanos how long a caller wants to have heard nobody before a call; zero for one who does not listen
 * @param holdOff how long it waits before it listens again after a busy channel, or calls again after a call that went well
 * @param redial how long it waits after a call in vain
 * @param redialGrowth by how much longer after each further one, 1 or more
 * @param mostCalls how many calls in vain, one after another, until the waiting messages are given up, 1 or more
 * @param patienceNanos how old a message may get before it is given up, positive; {@code Long.MAX_VALUE} for ever
 * @param callsInARow how often a call is repeated before it counts as in vain, a lost link being dialled anew by these rules as
 *     well; empty for as the mode's own rules have it
 * @param changesChannel whether it tries the next channel after a busy one or a call in vain
 */
public record OperatorRules(
        long listensNanos,
        Wait holdOff,
        Wait redial,
        double redialGrowth,
        int mostCalls,
        long patienceNanos,
        OptionalInt callsInARow,
        boolean changesChannel) {
    /** Checks every value. */
    public OperatorRules {
        OutOfRange.unless(listensNanos >= 0, "listensNanos", "must not be negative", listensNanos);
        OutOfRange.unless(
                redialGrowth >= 1 && redialGrowth <= 10, "redialGrowth", "must be from 1 to 10", redialGrowth);
        OutOfRange.unless(mostCalls >= 1, "mostCalls", "must be at least 1", mostCalls);
        OutOfRange.unless(
                callsInARow.orElse(1) >= 1 && callsInARow.orElse(1) <= 100,
                "callsInARow",
                "must be from 1 to 100",
                callsInARow.orElse(1));
        OutOfRange.unless(patienceNanos > 0, "patienceNanos", "must be above 0", patienceNanos);
    }
}
