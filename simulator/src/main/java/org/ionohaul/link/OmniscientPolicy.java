package org.ionohaul.link;

import java.util.Locale;

/**
 * The yardstick: takes the level of which the oracle expects most over the coming over, counted over the whole cycle that
 * the over takes.
 */
final class OmniscientPolicy implements SpeedPolicy {
    private final Timing timing;
    private final int levels;
    private double expected;

    OmniscientPolicy(Timing timing, int levels) {
        this.timing = timing;
        this.levels = levels;
    }

    @Override
    public int chooseLevel(long nowNanos) {
        int best = 1;
        expected = timing.expectedBytesPerSecond(1, nowNanos);
        for (int level = 2; level <= levels; level++) {
            double candidate = timing.expectedBytesPerSecond(level, nowNanos);
            if (candidate > expected) {
                expected = candidate;
                best = level;
            }
        }
        return best;
    }

    @Override
    public void onAcknowledged(long nowNanos, int atLevel, int framesSent, int framesLost, double snrDb) {}

    @Override
    public void onSilence(long nowNanos, int atLevel, int framesSent) {}

    @Override
    public String reason() {
        return String.format(Locale.ROOT, "the oracle expects %.1f bytes a second", expected);
    }
}
