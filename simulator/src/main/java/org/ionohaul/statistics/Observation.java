package org.ionohaul.statistics;

import java.util.Comparator;

/**
 * How long something was watched, and how that ended.
 *
 * @param time how long, zero or more, finite
 * @param isEvent whether the event came then; if not, watching broke off (a censored observation)
 */
public record Observation(double time, boolean isEvent) implements Comparable<Observation> {
    private static final Comparator<Observation> BY_TIME = Comparator.comparingDouble(Observation::time);

    /** Checks the time. */
    public Observation {
        if (!(time >= 0 && time < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("time must be finite and not negative: " + time);
        }
    }

    /** Orders by time; of equal times events come first. */
    @Override
    public int compareTo(Observation other) {
        return BY_TIME.thenComparing(Observation::isEvent, Comparator.reverseOrder())
                .compare(this, other);
    }
}
