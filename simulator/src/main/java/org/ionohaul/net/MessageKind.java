package org.ionohaul.net;

import java.util.List;
import org.ionohaul.limits.OutOfRange;

/**
 * Messages of one kind, written at each station of a group or for it at the gateway.
 *
 * @param name what people call it
 * @param isForStation whether it is written at the gateway for the station; else at the station for the gateway
 * @param priority who goes first where order is by priority; 1 is most urgent
 * @param sizes how long it is
 * @param arrivals when it is written
 * @param deadlinesSeconds times after writing to judge by, rising
 */
public record MessageKind(
        String name,
        boolean isForStation,
        int priority,
        Sizes sizes,
        Arrivals arrivals,
        List<Double> deadlinesSeconds) {
    /** How long messages are. */
    @FunctionalInterface
    public interface Sizes {
        /**
         * Returns the size, in bytes, below which the given share of messages is.
         *
         * @param probability above 0, below 1
         */
        double bytes(double probability);
    }

    /** Copies the deadlines and checks them and the priority. */
    public MessageKind {
        deadlinesSeconds = List.copyOf(deadlinesSeconds);
        OutOfRange.unless(priority >= 1 && priority <= 9, "priority", "must be from 1 to 9", priority);
        for (int i = 0; i < deadlinesSeconds.size(); i++) {
            OutOfRange.unless(
                    deadlinesSeconds.get(i) > (i == 0 ? 0 : deadlinesSeconds.get(i - 1)),
                    "deadlinesSeconds",
                    "must rise from above 0",
                    deadlinesSeconds);
        }
    }
}
