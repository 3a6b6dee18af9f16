package org.ionohaul.analysis;

import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.statistics.Estimate;

/**
 * When one file of a transfer is through. All intervals have confidence {@link Estimate#CONFIDENCE}.
 *
 * @param file the file
 * @param delivered share of trials in which it was delivered
 * @param tenthSeconds the time, after pressing send, that 1 of 10 trials keeps, in seconds; infinite if not reached
 * @param medianSeconds the time that 5 of 10 trials keep
 * @param ninthSeconds the time that 9 of 10 trials keep
 */
public record FileTimes(
        PayloadFile file, Estimate delivered, Estimate tenthSeconds, Estimate medianSeconds, Estimate ninthSeconds) {}
