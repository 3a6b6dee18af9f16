package org.ionohaul.analysis;

import java.util.OptionalDouble;

/**
 * How much a data rate was used.
 *
 * @param dataRate the data rate, 1 is the most robust
 * @param airtimeShare its share of the airtime of overs with frames, from 0 to 1
 * @param framesSent frames sent at it over all trials
 * @param framesLost of these, how many were not decoded
 */
public record DataRateShare(int dataRate, double airtimeShare, long framesSent, long framesLost) {
    /** Returns the share of its frames that were lost, from 0 to 1; empty if none was sent. */
    public OptionalDouble lostShare() {
        return framesSent == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) framesLost / framesSent);
    }
}
