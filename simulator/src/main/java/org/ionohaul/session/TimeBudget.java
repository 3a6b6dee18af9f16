package org.ionohaul.session;

import java.util.EnumMap;
import java.util.Map;

/** Where a session's time went: nanoseconds a {@link Cause}, which sum to the session's elapsed time. */
public final class TimeBudget {
    private final Map<Cause, Long> nanosByCause;

    private TimeBudget(Map<Cause, Long> nanosByCause) {
        this.nanosByCause = nanosByCause;
    }

    /**
     * Returns a budget.
     *
     * @param nanosByCause nanoseconds a cause; a cause left out took none; copied
     */
    public static TimeBudget of(Map<Cause, Long> nanosByCause) {
        Map<Cause, Long> copy = new EnumMap<>(Cause.class);
        copy.putAll(nanosByCause);
        return new TimeBudget(copy);
    }

    /** Returns the nanoseconds spent on a cause. */
    public long nanosOf(Cause cause) {
        return nanosByCause.getOrDefault(cause, 0L);
    }

    /** Returns the nanoseconds of all causes together: the elapsed time. */
    public long totalNanos() {
        return nanosByCause.values().stream().reduce(0L, Math::addExact);
    }
}
