package org.ionohaul.trial;

import java.util.Locale;
import org.ionohaul.rate.RatePolicy;

/** Takes the data rate of which the yardstick expects most over the coming over: no real station can. */
final class OmniscientPolicy implements RatePolicy {
    private final Yardstick yardstick;
    private double expected;

    OmniscientPolicy(Yardstick yardstick) {
        this.yardstick = yardstick;
    }

    @Override
    public int chooseDataRate(long nowNanos) {
        int best = yardstick.best(nowNanos);
        expected = yardstick.bytesPerSecond(best, nowNanos);
        return best;
    }

    @Override
    public void onAcknowledged(long nowNanos, int atDataRate, int framesSent, int framesLost, double snrDb) {}

    @Override
    public void onSilence(long nowNanos, int atDataRate, int framesSent) {}

    @Override
    public String reason() {
        return String.format(Locale.ROOT, "the oracle expects %.1f bytes a second", expected);
    }
}
