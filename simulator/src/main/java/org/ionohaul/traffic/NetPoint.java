package org.ionohaul.traffic;

/**
 * What a net comes to at one value of a key that is varied.
 *
 * @param value the value as it was written; empty if nothing is varied
 * @param findings what it comes to
 */
public record NetPoint(String value, NetFindings findings) {}
