package org.ionohaul.link;

/** Always the same data rate. */
final class FixedPolicy implements RatePolicy {
    private final int dataRate;

    FixedPolicy(int dataRate) {
        this.dataRate = dataRate;
    }

    @Override
    public int chooseDataRate(long nowNanos) {
        return dataRate;
    }

    @Override
    public void onAcknowledged(long nowNanos, int atDataRate, int framesSent, int framesLost, double snrDb) {}

    @Override
    public void onSilence(long nowNanos, int atDataRate, int framesSent) {}

    @Override
    public String reason() {
        return "fixed data rate";
    }
}
