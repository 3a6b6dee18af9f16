package org.ionohaul.channel;

import org.ionohaul.limits.OutOfRange;

/**
 * A receiver's automatic gain control, and how much it can hear at once. The gain follows the strongest within its 3 kHz;
 * what lies farther below that than the receiver's range drowns in the receiver's own noise and distortion. So a strong
 * neighbour blocks a weak station even if no part of their spectra is common, and for a while after it fell silent.
 *
 * <p>Deafness after one's own transmission is the station's recovery time; impulses and crashes are taken to be too short
 * to move the gain.
 *
 * @param attackSeconds how long the receiver is overrun when somebody louder than all before begins, zero or more
 * @param recoverySeconds in what time the gain comes back by 20 dB, zero or more
 * @param rangeDb how far below the strongest the receiver's own noise and distortion lie, in dB, positive; infinite for a
 *     receiver without limits
 */
public record GainControl(double attackSeconds, double recoverySeconds, double rangeDb) {
    /** A receiver that hears the weakest beside the strongest. */
    public static final GainControl NONE = new GainControl(0, 0, Double.POSITIVE_INFINITY);

    private static final double RECOVERED_DB = 20;

    /** Checks every value. */
    public GainControl {
        OutOfRange.unless(
                attackSeconds >= 0 && attackSeconds <= 10, "attackSeconds", "must be from 0 to 10 s", attackSeconds);
        OutOfRange.unless(
                recoverySeconds >= 0 && recoverySeconds <= 10,
                "recoverySeconds",
                "must be from 0 to 10 s",
                recoverySeconds);
        OutOfRange.unless(
                rangeDb > 0 && (rangeDb < 200 || rangeDb == Double.POSITIVE_INFINITY),
                "rangeDb",
                "must be above 0 and below 200",
                rangeDb);
    }

    /** Returns whether the receiver has limits. */
    public boolean isLimited() {
        return rangeDb < Double.POSITIVE_INFINITY;
    }

    /** Returns for how long a strong signal may be felt after its end, in seconds: until 100 dB are recovered. */
    double memorySeconds() {
        return 100 / RECOVERED_DB * recoverySeconds;
    }

    /** Returns what is left of a level that ended some time ago, as a power ratio from 0 to 1. */
    double left(double secondsAgo) {
        return secondsAgo > 0 ? Decibels.toRatio(-RECOVERED_DB * secondsAgo / recoverySeconds) : 1;
    }
}
