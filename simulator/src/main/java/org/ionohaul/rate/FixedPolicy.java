package org.ionohaul.rate;

/** Always the same data rate. */
public final class FixedPolicy implements RatePolicy {
    private final int dataRate;

    /** Takes a data rate, counted from 1, for good. */
    public FixedPolicy(int dataRate) {
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
