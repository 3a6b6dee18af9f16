package org.ionohaul.analysis;

import org.ionohaul.statistics.Estimate;

/**
 * The file size at which one mode stops being the first to deliver and another begins.
 *
 * @param firstBelow name of the mode that comes first more often with smaller files
 * @param firstAbove name of the mode that comes first more often with larger ones
 * @param bytes the size, with the smallest and the largest at which the trials still leave it open
 */
public record Crossing(String firstBelow, String firstAbove, Estimate bytes) {}
