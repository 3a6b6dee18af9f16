package org.ionohaul.trial;

import org.ionohaul.channel.End;
import org.ionohaul.link.Burst;
import org.ionohaul.link.Message;
import org.ionohaul.rate.RatePolicy;
import org.ionohaul.session.SessionTrace;

/**
 * Adds up the airtime that a session loses by sending at other data rates than the best one of the moment, which no station can
 * know: of each over the share by which the payload expected a second, counted over whole cycles, falls short of the best
 * data rate's. It lies across the causes of the time budget and is no cause of its own.
 */
final class WrongRate implements SessionTrace {
    private final Yardstick yardstick;
    private long chosenAtNanos;
    private double lostNanos;

    WrongRate(Yardstick yardstick) {
        this.yardstick = yardstick;
    }

    long lostNanos() {
        return Math.round(lostNanos);
    }

    /** An over is judged by the moment in which its data rate was chosen, as the yardstick would have chosen it. */
    @Override
    public void onDataRate(End at, int before, int chosen, RatePolicy policy, long atNanos) {
        chosenAtNanos = atNanos;
    }

    @Override
    public void onSent(End from, Burst burst, long durationNanos) {
        if (burst.message() != Message.OVER) {
            return;
        }
        double best = yardstick.bytesPerSecond(yardstick.best(chosenAtNanos), chosenAtNanos);
        if (best > 0) {
            lostNanos += durationNanos * (1 - yardstick.bytesPerSecond(burst.dataRate(), chosenAtNanos) / best);
        }
    }
}
