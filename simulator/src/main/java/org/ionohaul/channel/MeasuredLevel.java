package org.ionohaul.channel;

import org.ionohaul.limits.OutOfRange;

/**
 * The level at an end as it was measured, in place of the path's trend and of what slow variation is as slow as the readings.
 *
 * <p>A reading is the mean power over some time, so it holds no fading and no slow variation that is faster; what is slower is in the
 * readings already. So slow variation counts only as it differs from its own running mean over that time, or over the time
 * between two readings where that is longer. Before the first and after the last reading nothing was measured: the level stays
 * at the nearest reading, and slow variation counts whole. The mean power at any instant is that of the readings.
 *
 * @param changeDb the readings, joined by straight lines in dB, relative to the SNR stated; at least one
 * @param averageSeconds over how long each is an average, 0 or more
 */
public record MeasuredLevel(Schedule changeDb, double averageSeconds) {
    /** Checks that there is a reading, and the time. */
    public MeasuredLevel {
        if (changeDb.points().isEmpty()) {
            throw new IllegalArgumentException("changeDb must have a point");
        }
        OutOfRange.unless(
                averageSeconds >= 0 && averageSeconds <= 86_400,
                "averageSeconds",
                "must be from 0 to 24 h",
                averageSeconds);
    }

    /** Returns these readings for a trial that begins so many seconds later; may be negative. */
    MeasuredLevel startingAfter(double seconds) {
        return new MeasuredLevel(changeDb.startingAfter(seconds), averageSeconds);
    }
}
