package org.ionohaul.placing;

import org.ionohaul.fieldlog.LoggedOutcome;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.fieldlog.NotedTime;
import org.ionohaul.fieldlog.Rounding;

/**
 * The scale on which runs of one kind are laid beside each other, from quick to slow, as far as the log tells them apart.
 * Delivered runs stand by their time; behind all of them those that did not deliver, or not before the logged one was broken
 * off: by the bytes that they still lacked, where the log says how many were through, else all alike.
 *
 * <p>The time is the one that was noted: until delivered, else that of the session. Of a run that delivered but never closed, the
 * end of the session only says by when it had delivered.
 */
final class Slowness {
    /** Above all times, which are at most a few days. */
    private static final double UNDELIVERED = 1e9;

    private static final double DEFAULT_STEP_SECONDS = 1;

    private final LoggedRun run;
    private final boolean isSessionTimed;
    private final double watchedSeconds;
    private final NotedTime watch;
    private final double byteStep;

    Slowness(LoggedRun run) {
        this.run = run;
        this.isSessionTimed = run.deliveredAfter().isEmpty()
                && run.sessionTime().isPresent()
                && run.outcome() == LoggedOutcome.DELIVERED;
        this.watchedSeconds = run.outcome() == LoggedOutcome.BROKEN_OFF
                ? run.sessionTime().map(NotedTime::seconds).orElse(Double.POSITIVE_INFINITY)
                : Double.POSITIVE_INFINITY;
        this.watch = run.deliveredAfter()
                .or(run::sessionTime)
                .orElse(new NotedTime(0, DEFAULT_STEP_SECONDS, Rounding.NEAREST));
        this.byteStep = lastDigit(run.throughBytes().orElse(0));
    }

    /** Returns whether times on it are those of whole sessions, and not until delivered. */
    boolean isSessionTimed() {
        return isSessionTimed;
    }

    /** Returns until when bytes are counted, in seconds; infinite for all. */
    double watchedSeconds() {
        return watchedSeconds;
    }

    /** Returns where a simulated run stands on this scale. */
    double of(SimulatedRun simulated) {
        double delivered = simulated.deliveredSeconds();
        if (delivered <= watchedSeconds && Double.isFinite(delivered)) {
            return isSessionTimed ? simulated.endedSeconds() : delivered;
        }
        boolean isCounted = !run.outcome().isDelivered() && run.throughBytes().isPresent();
        return isCounted ? UNDELIVERED + (double) Math.max(0, run.sentBytes() - simulated.bytesThrough()) : UNDELIVERED;
    }

    /** Returns between which places the logged run may stand. */
    Span logged() {
        if (!run.outcome().isDelivered()) {
            return run.throughBytes().isPresent()
                    ? lacking((double) (run.sentBytes() - run.throughBytes().getAsLong()))
                    : new Span(UNDELIVERED, UNDELIVERED);
        }
        return isTimed() ? new Span(watch.lowSeconds(), watch.highSeconds()) : new Span(0, boundSeconds());
    }

    /** Returns whether the log says when it delivered, and not only that it had by some time. */
    private boolean isTimed() {
        return run.deliveredAfter().isPresent() || isSessionTimed;
    }

    /** Returns by when it had delivered, for all that the log says of a run that did. */
    private double boundSeconds() {
        return run.sessionTime().map(NotedTime::highSeconds).orElse(Math.nextDown(UNDELIVERED));
    }

    /**
     * Returns between which places a simulated run might stand if the same person had logged it, looking at the same moments.
     *
     * @param place where it stands
     */
    Span noted(double place) {
        if (run.outcome().isDelivered() && !isTimed()) {
            return place <= boundSeconds()
                    ? new Span(0, boundSeconds())
                    : new Span(Math.nextUp(boundSeconds()), UNDELIVERED);
        }
        if (place > UNDELIVERED) {
            return lacking(place - UNDELIVERED);
        }
        if (place == UNDELIVERED) {
            return new Span(UNDELIVERED, UNDELIVERED);
        }
        NotedTime written = watch.written(place);
        return new Span(written.lowSeconds(), written.highSeconds());
    }

    private Span lacking(double bytes) {
        return new Span(UNDELIVERED + Math.max(0, bytes - byteStep / 2), UNDELIVERED + bytes + byteStep / 2);
    }

    /** A number of bytes is as exact as its last digit that is not nought: 12,000 is to the nearest thousand. */
    private static double lastDigit(long bytes) {
        double step = 1;
        while (bytes != 0 && bytes % (10 * step) == 0) {
            step *= 10;
        }
        return step;
    }

    /**
     * Two places on the scale and all between.
     *
     * @param low the quicker
     * @param high the slower, not below {@code low}
     */
    record Span(double low, double high) {}
}
