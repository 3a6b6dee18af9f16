package org.ionohaul.link;

import java.util.Locale;

/**
 * The yardstick: takes the data rate of which the oracle expects most over the coming over, counted over the whole cycle that
 * the over takes.
 */
final class OmniscientPolicy implements RatePolicy {
    private final Timing timing;
    private final int dataRates;
    private double expected;

    OmniscientPolicy(Timing timing, int dataRates) {
        this.timing = timing;
        this.dataRates = dataRates;
    }

    @Override
    public int chooseDataRate(long nowNanos) {
        int best = 1;
        expected = timing.expectedBytesPerSecond(1, nowNanos);
        for (int dataRate = 2; dataRate <= dataRates; dataRate++) {
            double candidate = timing.expectedBytesPerSecond(dataRate, nowNanos);
            if (candidate > expected) {
                expected = candidate;
                best = dataRate;
            }
        }
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
