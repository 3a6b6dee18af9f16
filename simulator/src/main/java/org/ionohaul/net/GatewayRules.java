package org.ionohaul.net;

import org.ionohaul.limits.OutOfRange;

/**
 * How the gateway works its channels.
 *
 * @param channels how many there are, 1 or more
 * @param hasRadioEach whether it has a radio for each, so that it can serve as many callers; else one radio scans them
 * @param dwellNanos how long that radio stays on a channel before it looks at the next, positive
 * @param sessionLimitNanos how long a caller may keep it, positive; {@code Long.MAX_VALUE} for as long as it takes
 * @param idleNanos how long it holds a caller from whom it hears nothing, positive; {@code Long.MAX_VALUE} for as long as
 *     the mode holds a link
 * @param calls whether it calls stations for which messages wait; else these wait until the station calls
 */
public record GatewayRules(
        int channels, boolean hasRadioEach, long dwellNanos, long sessionLimitNanos, long idleNanos, boolean calls) {
    /** Checks every value. */
    public GatewayRules {
        OutOfRange.unless(channels >= 1 && channels <= 20, "channels", "must be from 1 to 20", channels);
        OutOfRange.unless(dwellNanos > 0, "dwellNanos", "must be above 0", dwellNanos);
        OutOfRange.unless(sessionLimitNanos > 0, "sessionLimitNanos", "must be above 0", sessionLimitNanos);
        OutOfRange.unless(idleNanos > 0, "idleNanos", "must be above 0", idleNanos);
    }

    /** Returns which channel the scanning radio is on, from 0. */
    int scanned(long nowNanos) {
        return (int) (nowNanos / dwellNanos % channels);
    }
}
