package org.ionohaul.onair;

/**
 * What one run on the air came to.
 *
 * @param throughSeconds when the receiver held everything, in seconds after pressing send; infinite if it never did
 * @param endedNanos when the session ended for the station that dialled, in nanoseconds after pressing send
 */
public record Run(double throughSeconds, long endedNanos) {}
