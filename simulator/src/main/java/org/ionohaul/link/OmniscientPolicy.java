package org.ionohaul.link;

import java.util.Locale;

/**
 * The yardstick: takes the level of which the oracle expects most over the coming over, counted over the whole cycle that
 * the over takes.
 */
final class OmniscientPolicy implements SpeedPolicy {
    private final Oracle oracle;
    private final double[] airShare;
    private double expected;

    OmniscientPolicy(Oracle oracle, Timing timing, int levels) {
        this.oracle = oracle;
        airShare = new double[levels];
        for (int at = 0; at < levels; at++) {
            airShare[at] = timing.airShare(at + 1);
        }
    }

    @Override
    public int chooseLevel(long nowNanos) {
        int best = 1;
        expected = bytesPerSecond(1, nowNanos);
        for (int level = 2; level <= airShare.length; level++) {
            double candidate = bytesPerSecond(level, nowNanos);
            if (candidate > expected) {
                expected = candidate;
                best = level;
            }
        }
        return best;
    }

    private double bytesPerSecond(int level, long nowNanos) {
        return oracle.payloadBytesPerSecond(level, nowNanos) * airShare[level - 1];
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
