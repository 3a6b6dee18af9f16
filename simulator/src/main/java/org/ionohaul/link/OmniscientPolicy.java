package org.ionohaul.link;

import java.util.Locale;

/** The yardstick: takes the level of which the oracle expects most over the coming over. */
final class OmniscientPolicy implements SpeedPolicy {
    private final Oracle oracle;
    private final int levels;
    private double expected;

    OmniscientPolicy(Oracle oracle, int levels) {
        this.oracle = oracle;
        this.levels = levels;
    }

    @Override
    public int chooseLevel(long nowNanos) {
        int best = 1;
        expected = oracle.payloadBytesPerSecond(1, nowNanos);
        for (int level = 2; level <= levels; level++) {
            double candidate = oracle.payloadBytesPerSecond(level, nowNanos);
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
