package org.ionohaul.analysis;

import org.ionohaul.statistics.Estimate;

/**
 * How long files of one size take. All intervals have confidence {@link Estimate#CONFIDENCE}.
 *
 * @param bytes the size
 * @param isSent whether such files were sent; else they are read off a later transfer, which leaves open up to one over more
 * @param tenthSeconds the time that 1 of 10 trials keeps, in seconds; infinite if not reached
 * @param medianSeconds the time that 5 of 10 trials keep
 * @param ninthSeconds the time that 9 of 10 trials keep
 * @param reached share of trials that got so far within the time watched
 */
public record SizePoint(
        long bytes,
        boolean isSent,
        Estimate tenthSeconds,
        Estimate medianSeconds,
        Estimate ninthSeconds,
        Estimate reached) {}
