package org.ionohaul.link;

import org.ionohaul.channel.Decibels;

/** A transmitter that warms while it is keyed and cools while it is not. */
final class Transmitter {
    private final FoldBack rules;
    private final double loweredPower;
    private double warmNanos;
    private long keyUpNanos;

    Transmitter(FoldBack rules) {
        this.rules = rules;
        this.loweredPower = Decibels.toRatio(-rules.dropDb());
    }

    /**
     * Keys it, and tells the burst when its power falls.
     *
     * @param burst one that has just left
     * @param durationNanos how long it lasts
     */
    void key(Burst burst, long durationNanos) {
        double coolShare =
                rules.coolingNanos() == 0 ? 1 : (burst.startNanos() - keyUpNanos) / (double) rules.coolingNanos();
        warmNanos = Math.max(0, warmNanos - coolShare * rules.afterNanos());
        long fullNanos = Math.min(durationNanos, Math.round(rules.afterNanos() - warmNanos));
        burst.lowerPower(fullNanos, durationNanos, loweredPower);
        warmNanos = Math.min((double) rules.afterNanos(), warmNanos + durationNanos);
        keyUpNanos = burst.startNanos() + durationNanos;
    }
}
