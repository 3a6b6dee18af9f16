package org.ionohaul.channel;

/**
 * What can be said of one end over a span of time.
 *
 * @param fromNanos when the span begins
 * @param toNanos when it ends
 * @param sinrDb SINR of a carrier in 3 kHz, in dB
 * @param disturbanceDb noise, impulses and other stations in 3 kHz, in dB over the noise floor at the trial's beginning
 * @param fadesPerMinute how often a minute the carrier falls {@value SkyWatch#FADE_DB} dB below its mean of the moment
 * @param fadedShare share of the time it is below that
 * @param occupiedShare share of the time that other stations together are stronger than the noise floor
 * @param droppedOutShare share of the time that the sky wave drops out
 * @param sporadicShare share of the time that sporadic E carries it
 */
public record WatchSummary(
        long fromNanos,
        long toNanos,
        Deciles sinrDb,
        Deciles disturbanceDb,
        double fadesPerMinute,
        double fadedShare,
        double occupiedShare,
        double droppedOutShare,
        double sporadicShare) {}
