package org.ionohaul.analysis;

/**
 * How much a data rate was used.
 *
 * @param dataRate the data rate, 1 is the most robust
 * @param airtimeShare its share of the airtime of overs with frames, from 0 to 1
 * @param framesSent frames sent at it over all trials
 * @param framesLost of these, how many were not decoded
 */
public record DataRateShare(int dataRate, double airtimeShare, long framesSent, long framesLost) {}
