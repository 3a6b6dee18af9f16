package org.ionohaul.session;

/**
 * How much one speed level was used in a session.
 *
 * @param airtimeNanos time on the air with overs of this level
 * @param framesSent frames sent at this level, repeats included
 * @param framesLost of these, how many were not decoded
 */
public record LevelUse(long airtimeNanos, int framesSent, int framesLost) {}
