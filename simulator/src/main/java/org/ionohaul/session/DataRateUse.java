package org.ionohaul.session;

/**
 * How much one data rate was used in a session.
 *
 * @param airtimeNanos time on the air with overs of this data rate
 * @param framesSent frames sent at this data rate, repeats included
 * @param framesLost of these, how many were not decoded
 */
public record DataRateUse(long airtimeNanos, int framesSent, int framesLost) {}
