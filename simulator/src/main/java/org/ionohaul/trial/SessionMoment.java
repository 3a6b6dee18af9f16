package org.ionohaul.trial;

import org.ionohaul.channel.DerivedReception;
import org.ionohaul.channel.Reception;

/**
 * When a session begins on its trial's sky, and which of its mode's sessions there it is. A session's own clock begins with
 * it; the sky's goes on.
 *
 * @param startNanos when the operator presses send, in nanoseconds since the trial began, zero or more
 * @param repeat how many sessions of the same mode came before it on this sky, zero or more: each has chances of its own
 */
record SessionMoment(long startNanos, long repeat) {
    /** The first session, begun with the trial. */
    static final SessionMoment FIRST = new SessionMoment(0, 0);

    SessionMoment {
        if (startNanos < 0 || repeat < 0) {
            throw new IllegalArgumentException("must not be negative: " + startNanos + ", " + repeat);
        }
    }

    /** Returns how the session hears what the sky lets through, by its own clock. */
    Reception heard(Reception bySkyClock) {
        return startNanos == 0 ? bySkyClock : new Later(bySkyClock, startNanos);
    }

    /** A reception from a later instant on. */
    private record Later(Reception original, long startNanos) implements DerivedReception {
        @Override
        public void powers(long atNanos, double[] signal, double[] disturbance) {
            original.powers(startNanos + atNanos, signal, disturbance);
        }

        @Override
        public double meanSignal(long atNanos) {
            return original.meanSignal(startNanos + atNanos);
        }
    }
}
