package org.ionohaul.study;

/**
 * How much a speed level was used.
 *
 * @param level the level, 1 is the most robust
 * @param airtimeShare its share of the airtime of overs with frames, from 0 to 1
 * @param framesSent frames sent at it over all trials
 * @param framesLost of these, how many were not decoded
 */
public record LevelShare(int level, double airtimeShare, long framesSent, long framesLost) {}
