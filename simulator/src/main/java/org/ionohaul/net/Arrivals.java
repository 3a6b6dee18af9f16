package org.ionohaul.net;

import java.util.List;
import org.ionohaul.limits.OutOfRange;

/** When the messages of one kind are written at one station. */
public sealed interface Arrivals {
    /**
     * At stated times.
     *
     * @param atSeconds times since the trial began, in seconds, zero or more
     */
    record Schedule(List<Double> atSeconds) implements Arrivals {
        /** Copies the list and checks it. */
        public Schedule {
            atSeconds = List.copyOf(atSeconds);
            OutOfRange.unless(
                    !atSeconds.isEmpty() && atSeconds.stream().allMatch(it -> it >= 0 && it <= 1e6),
                    "atSeconds",
                    "must be times after the beginning",
                    atSeconds);
        }
    }

    /**
     * By chance, each moment as likely as any other.
     *
     * @param perHour how many an hour on average, above 0
     */
    record Poisson(double perHour) implements Arrivals {
        /** Checks the rate. */
        public Poisson {
            OutOfRange.unless(
                    perHour > 0 && perHour <= 3600, "perHour", "must be above 0 and at most 3600 an hour", perHour);
        }
    }

    /**
     * One at each station after an event.
     *
     * @param atSeconds when the event is, in seconds since the trial began, zero or more
     * @param withinSeconds until how long after it they are written, each moment as likely, zero or more
     */
    record AfterEvent(double atSeconds, double withinSeconds) implements Arrivals {
        /** Checks both times. */
        public AfterEvent {
            OutOfRange.unless(atSeconds >= 0 && atSeconds <= 1e6, "atSeconds", "must not be negative", atSeconds);
            OutOfRange.unless(
                    withinSeconds >= 0 && withinSeconds <= 1e6, "withinSeconds", "must not be negative", withinSeconds);
        }
    }

    /**
     * The next one after a pause, exponential, from when the last one was through or given up.
     *
     * @param pauseSeconds mean of the pause, above 0
     */
    record WhenThrough(double pauseSeconds) implements Arrivals {
        /** Checks the pause. */
        public WhenThrough {
            OutOfRange.unless(pauseSeconds > 0 && pauseSeconds <= 1e6, "pauseSeconds", "must be above 0", pauseSeconds);
        }
    }
}
