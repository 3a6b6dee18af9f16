package org.ionohaul.trial;

import org.ionohaul.channel.End;
import org.ionohaul.channel.Sky;

/**
 * What one trial's sky comes to over a while from pressing send.
 *
 * @param near at the station that dials
 * @param far at the station that is called
 */
public record TrialSky(EndSky near, EndSky far) {
    /** Reads a sky off, over a positive number of seconds from pressing send. */
    public static TrialSky of(Sky sky, double lengthSeconds) {
        if (!(lengthSeconds > 0 && lengthSeconds < 1e9)) {
            throw new IllegalArgumentException("lengthSeconds must be positive: " + lengthSeconds);
        }
        return new TrialSky(EndSky.of(sky, End.NEAR, lengthSeconds), EndSky.of(sky, End.FAR, lengthSeconds));
    }
}
