package org.ionohaul.link;

/** Always the same level. */
final class FixedPolicy implements SpeedPolicy {
    private final int level;

    FixedPolicy(int level) {
        this.level = level;
    }

    @Override
    public int chooseLevel(long nowNanos) {
        return level;
    }

    @Override
    public void onAcknowledged(long nowNanos, int atLevel, int framesSent, int framesLost, double snrDb) {}

    @Override
    public void onSilence(long nowNanos, int atLevel, int framesSent) {}

    @Override
    public String reason() {
        return "fixed level";
    }
}
