package org.ionohaul.channel;

/** What one end's gain control does to reception in one trial: a function of time, like all of the sky. */
final class GainAtEnd {
    private static final double NANOS = 1e9;

    private final GainControl control;
    private final NoiseAtEnd noise;
    private final double ownShare;

    GainAtEnd(GainControl control, NoiseAtEnd noise) {
        this.control = control;
        this.noise = noise;
        this.ownShare = control.isLimited() ? Decibels.toRatio(-control.rangeDb()) : 0;
    }

    /** Returns whether it does anything. */
    boolean isLimited() {
        return ownShare > 0;
    }

    /**
     * Returns the receiver's own noise and distortion, relative to the noise floor when the trial begins.
     *
     * @param signal power of the wanted signal at the moment, likewise
     */
    double ownNoise(long atNanos, double signal) {
        int span = noise.occupancy().spanAt(atNanos);
        double now = signal + noise.between(atNanos) + noise.othersIn(span);
        return ownShare * Math.max(now, held(span, atNanos));
    }

    /**
     * Adds to the bursts of a stretch the times in which the receiver is overrun: whoever begins louder than all that the
     * gain was set for is, until it has followed, all that is heard.
     */
    void overruns(long fromNanos, long toNanos, NoiseBursts bursts) {
        if (!isLimited() || control.attackSeconds() == 0) {
            return;
        }
        Occupancy occupancy = noise.occupancy();
        double attackNanos = control.attackSeconds() * NANOS;
        int first = occupancy.spanAt((long) Math.max(0, fromNanos - attackNanos));
        int last = occupancy.spanAt(toNanos - 1);
        for (int span = Math.max(1, first); span <= last; span++) {
            long startNanos = occupancy.startNanos(span);
            double power = noise.othersIn(span);
            double before = noise.between(startNanos) + Math.max(noise.othersIn(span - 1), held(span, startNanos));
            double overlap = Math.min((double) toNanos, startNanos + attackNanos) - Math.max(fromNanos, startNanos);
            if (power > before && overlap > 0) {
                bursts.add(power, overlap / (toNanos - fromNanos), control.attackSeconds());
            }
        }
    }

    /** Returns the level that the gain is still set for because of what was on before a span. */
    private double held(int span, long atNanos) {
        Occupancy occupancy = noise.occupancy();
        double held = 0;
        double secondsAgo = 0;
        for (int earlier = span - 1; earlier >= 0 && secondsAgo <= control.memorySeconds(); earlier--) {
            secondsAgo = (atNanos - occupancy.startNanos(earlier + 1)) / NANOS;
            held = Math.max(held, noise.othersIn(earlier) * control.left(secondsAgo));
        }
        return held;
    }
}
